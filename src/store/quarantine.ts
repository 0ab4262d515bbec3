import { join } from "node:path";
import type { Quarantine } from "../cases/ports.ts";
import { createDurableFile } from "./durable-file.ts";
import { fileNameFor } from "./file-name.ts";
import type { FileOperations } from "./file-operations.ts";
import { disk } from "./file-operations.ts";

/** Keeps each update that could not be handled as a file of its own, for somebody to look at. */
export function createQuarantine(folder: string, files: FileOperations = disk): Quarantine {
  return {
    async put(record) {
      await files.makeFolder(folder);
      const path = join(folder, fileNameFor(record.incoming.update));
      await createDurableFile(path, files).write({ text: `${JSON.stringify(record, null, 2)}\n` });
    },
  };
}
