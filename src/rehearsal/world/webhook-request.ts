import { request } from "node:http";

/** What came back from the bot's webhook. */
export interface WebhookReply {
  /** The HTTP status, or 0 when the connection failed. */
  status: number;
  statusText: string;
  /** Whole seconds from a `Retry-After` header, 0 when there is none. */
  retryAfterSeconds: number;
  body: string;
}

export interface WebhookMessage {
  url: string;
  secret: string;
  body: string;
}

/** A bot that answers nothing for this long has failed, in milliseconds (server: 60 s). */
const SILENCE_MILLISECONDS = 60_000;

/** Posts one update to the bot. Never rejects: a failed connection is a reply with status 0. */
export function postToWebhook(message: WebhookMessage): Promise<WebhookReply> {
  return new Promise((resolve) => {
    const failed = () => resolve({ status: 0, statusText: "", retryAfterSeconds: 0, body: "" });
    const secret: Record<string, string> =
      message.secret === "" ? {} : { "x-telegram-bot-api-secret-token": message.secret };
    const outgoing = request(
      message.url,
      {
        method: "POST",
        agent: false,
        timeout: SILENCE_MILLISECONDS,
        headers: {
          "content-type": "application/json",
          "content-length": Buffer.byteLength(message.body),
          ...secret,
        },
      },
      (response) => {
        let body = "";
        response.setEncoding("utf8");
        response.on("data", (chunk: string) => {
          body += chunk;
        });
        response.on("error", failed);
        response.on("end", () =>
          resolve({
            status: response.statusCode ?? 0,
            statusText: response.statusMessage ?? "",
            retryAfterSeconds: Number(response.headers["retry-after"] ?? 0) || 0,
            body,
          }),
        );
      },
    );
    outgoing.on("timeout", () => outgoing.destroy());
    outgoing.on("error", failed);
    outgoing.end(message.body);
  });
}
