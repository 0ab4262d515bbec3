import type { ResponseParameters } from "@grammyjs/types";

/**
 * A call that the server refuses. The wire turns it into
 * `{"ok":false,"error_code":…,"description":…}` with the code as the HTTP status, the way the real
 * Bot API server does.
 */
export class ApiRefusal extends Error {
  override readonly name = "ApiRefusal";
  readonly errorCode: number;
  readonly description: string;
  readonly parameters: ResponseParameters;

  constructor(errorCode: number, description: string, parameters: ResponseParameters = {}) {
    super(`${errorCode} ${description}`);
    this.errorCode = errorCode;
    this.description = description;
    this.parameters = parameters;
  }
}

/** 400. @param reason the wording after "Bad Request: " */
export function badRequest(reason: string, parameters: ResponseParameters = {}): ApiRefusal {
  return new ApiRefusal(400, `Bad Request: ${reason}`, parameters);
}

/** 401, the answer to a token the server does not know. */
export function unauthorized(): ApiRefusal {
  return new ApiRefusal(401, "Unauthorized");
}

/** 403. @param reason the wording after "Forbidden: " */
export function forbidden(reason: string): ApiRefusal {
  return new ApiRefusal(403, `Forbidden: ${reason}`);
}

/** 404 for a method the server does not know. */
export function methodNotFound(): ApiRefusal {
  return new ApiRefusal(404, "Not Found: method not found");
}

/** 409. @param reason the wording after "Conflict: " */
export function conflict(reason: string): ApiRefusal {
  return new ApiRefusal(409, `Conflict: ${reason}`);
}

/** 413, a request body above the upload limit. */
export function entityTooLarge(): ApiRefusal {
  return new ApiRefusal(413, "Request Entity Too Large");
}

/** 429. @param seconds how long the caller shall wait, whole seconds, 1 or more */
export function tooManyRequests(seconds: number): ApiRefusal {
  return new ApiRefusal(429, `Too Many Requests: retry after ${seconds}`, { retry_after: seconds });
}

/** 400 for a group that became a supergroup. @param chatId the id it has now */
export function migrated(chatId: number): ApiRefusal {
  return badRequest("group chat was upgraded to a supergroup chat", { migrate_to_chat_id: chatId });
}
