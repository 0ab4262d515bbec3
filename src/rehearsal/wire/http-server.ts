import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { ApiRefusal, unauthorized } from "../refusal.ts";
import { FILE_DOWNLOAD } from "../world/faults.ts";
import type { World } from "../world/world.ts";
import { carryOut, type Outcome, struckBefore } from "./carry-out.ts";
import { type Route, readBody, readParams, routeOf } from "./request.ts";

/**
 * An extra route. Gets the requests that are no calls and no file links.
 * @returns true when it has taken the request on
 */
export type ExtraRoute = (
  request: IncomingMessage,
  response: ServerResponse,
) => boolean | Promise<boolean>;

export interface HttpParts {
  world: World;
  token: string;
  routes: readonly ExtraRoute[];
}

/** Room for the form around the largest upload, in bytes. */
const FORM_OVERHEAD_BYTES = 1 << 20;

/**
 * How long an idle connection stays open, in milliseconds: longer than a client's own patience,
 * so that no call meets a connection that is just being closed. Ours.
 */
const KEEP_ALIVE_MILLISECONDS = 75_000;

/** Makes the HTTP server; it does not listen yet. */
export function createHttpServer(parts: HttpParts): Server {
  return createServer({ keepAliveTimeout: KEEP_ALIVE_MILLISECONDS }, (request, response) => {
    respond(parts, request, response).catch((error: unknown) => {
      // A mistake in this server, not a refusal: it shall not look like one of the platform's.
      const reason = error instanceof Error ? error.message : String(error);
      sendJson(response, 500, refused(500, `Internal Server Error: rehearsal server: ${reason}`));
    });
  });
}

async function respond(
  parts: HttpParts,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const url = new URL(request.url ?? "/", "http://127.0.0.1");
  const route = routeOf(url.pathname);
  if (!isLoopback(request.headers.host)) sendJson(response, 403, refused(403, "Forbidden"));
  else if (route.kind === "other") await respondOther(parts, request, response);
  else if (route.token !== parts.token) sendJson(response, 401, refusalBody(unauthorized()));
  else if (route.kind === "file") sendFile(parts.world, route.path, response);
  else await respondCall(parts.world, { route, query: url.searchParams }, { request, response });
}

/** A web page from elsewhere that has its name point to this computer is turned away. */
function isLoopback(host: string | undefined): boolean {
  return /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/i.test(host ?? "");
}

async function respondOther(
  { routes }: HttpParts,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  for (const route of routes) if (await route(request, response)) return;
  sendJson(response, 404, refused(404, "Not Found"));
}

async function respondCall(
  world: World,
  { route, query }: { route: Route & { kind: "method" }; query: URLSearchParams },
  { request, response }: { request: IncomingMessage; response: ServerResponse },
): Promise<void> {
  const gone = new AbortController();
  response.on("close", () => {
    if (!response.writableFinished) gone.abort();
  });
  let outcome: Outcome;
  try {
    const body = await readBody(request, world.limits.uploadBytes + FORM_OVERHEAD_BYTES);
    const params = readParams(query, request.headers["content-type"] ?? "", body);
    outcome = await carryOut(world, route.method, { params, gone: gone.signal });
  } catch (error) {
    if (!(error instanceof ApiRefusal)) throw error;
    outcome = { kind: "refusal", refusal: error };
  }
  conclude(world, response, outcome);
}

function conclude(world: World, response: ServerResponse, outcome: Outcome): void {
  switch (outcome.kind) {
    case "result": {
      const send = () => sendJson(response, 200, { ok: true, result: outcome.result });
      if (outcome.delayMilliseconds === 0) send();
      else world.time.wait(outcome.delayMilliseconds, send);
      return;
    }
    case "refusal":
      sendJson(response, outcome.refusal.errorCode, refusalBody(outcome.refusal));
      return;
    case "webPage": {
      const page = `<html><body><h1>${outcome.status} Bad Gateway</h1></body></html>`;
      response.writeHead(outcome.status, { "content-type": "text/html" }).end(page);
      return;
    }
    case "reset":
      response.socket?.resetAndDestroy();
  }
}

function refused(errorCode: number, description: string): Record<string, unknown> {
  return { ok: false, error_code: errorCode, description };
}

function refusalBody({ errorCode, description, parameters }: ApiRefusal): Record<string, unknown> {
  const hasParameters = Object.keys(parameters).length > 0;
  return { ...refused(errorCode, description), ...(hasParameters ? { parameters } : {}) };
}

function sendJson(response: ServerResponse, status: number, body: unknown): void {
  if (response.destroyed || response.headersSent) return;
  const text = JSON.stringify(body);
  response
    .writeHead(status, {
      "content-type": "application/json",
      "content-length": Buffer.byteLength(text),
    })
    .end(text);
}

function sendFile(world: World, path: string, response: ServerResponse): void {
  const fault = struckBefore(world.faults.take(FILE_DOWNLOAD, undefined));
  const file = world.files.atPath(path);
  if (fault !== undefined) conclude(world, response, fault);
  else if (file === undefined) sendJson(response, 404, refused(404, "Not Found"));
  else {
    const headers = {
      "content-type": "application/octet-stream",
      "content-length": file.bytes.length,
    };
    response.writeHead(200, headers).end(file.bytes);
  }
}
