import { badRequest, tooManyRequests } from "../refusal.ts";
import { type Call, clamped, type Method } from "./call.ts";

const WEBHOOK_IS_ACTIVE =
  "can't use getUpdates method while webhook is active; " +
  "use deleteWebhook to delete the webhook first";

/** Most updates in one answer (Bot API reference: 1-100). */
const MOST_UPDATES = 100;
/** Connections of a webhook (Bot API reference: 1-100, 40 when not named). */
const MOST_CONNECTIONS = 100;
const USUAL_CONNECTIONS = 40;
/** Longest webhook secret (Bot API reference: 1-256 characters). */
const LONGEST_SECRET = 256;

function getUpdates(call: Call): unknown {
  const { world } = call;
  if (world.webhook.isSet()) return world.polling.refuse(WEBHOOK_IS_ACTIVE);
  rememberAllowed(call);
  const args = {
    offset: call.params.integer("offset") ?? 0,
    limit: clamped(call, "limit", { min: 1, max: MOST_UPDATES, otherwise: MOST_UPDATES }),
    timeoutSeconds: clamped(call, "timeout", {
      min: 0,
      max: world.limits.pollSeconds,
      otherwise: 0,
    }),
  };
  return world.polling.poll(args, call.gone);
}

/** The types asked for stay in force until others are named; what is no list is passed over. */
function rememberAllowed({ world, params }: Call): void {
  let types: unknown;
  try {
    types = params.json("allowed_updates");
  } catch {
    return;
  }
  if (Array.isArray(types)) world.queue.allow(types.map(String));
}

function setWebhook(call: Call): unknown {
  const { world, params } = call;
  const url = params.text("url");
  if (url === "") return deleteWebhook(call);
  const now = world.time.clock();
  if (now < world.webhook.nextSetAt) throw tooManyRequests(1);
  world.webhook.nextSetAt = now + world.limits.setWebhookSeconds * 1000;
  checkAddress(url);
  const secret = params.text("secret_token");
  if (secret.length > LONGEST_SECRET) throw badRequest("secret token is too long");
  if (!/^[A-Za-z0-9_-]*$/.test(secret)) {
    throw badRequest("secret token contains unallowed characters");
  }
  if (params.flag("drop_pending_updates")) world.queue.clear();
  rememberAllowed(call);
  world.polling.refuseForWebhook();
  const maxConnections = clamped(call, "max_connections", {
    min: 1,
    max: MOST_CONNECTIONS,
    otherwise: USUAL_CONNECTIONS,
  });
  world.webhook.set({ url, secret, maxConnections });
  return true;
}

/**
 * This server posts to this computer only, and therefore over plain HTTP; the real one demands
 * HTTPS and a public address.
 */
function checkAddress(url: string): void {
  if (!URL.canParse(url)) throw badRequest("invalid webhook URL specified");
  const { protocol, hostname } = new URL(url);
  const isLoopback = ["127.0.0.1", "localhost", "[::1]"].includes(hostname);
  if (protocol === "http:" && isLoopback) return;
  throw badRequest(
    protocol === "http:"
      ? "bad webhook: An HTTPS URL must be provided for webhook"
      : "bad webhook: this rehearsal server posts to http://127.0.0.1 only",
  );
}

function deleteWebhook({ world, params }: Call): unknown {
  if (params.flag("drop_pending_updates")) world.queue.clear();
  world.webhook.clear();
  return true;
}

/** The methods by which updates reach the bot. */
export const UPDATE_METHODS: Readonly<Record<string, Method>> = {
  getMe: ({ world }) => world.bot,
  getUpdates,
  setWebhook,
  deleteWebhook,
  getWebhookInfo: ({ world }) => world.webhook.info(),
};
