/**
 * Every number the server enforces, in one place so that a test can make one smaller.
 * Sources: "reference" = the Bot API reference text as carried by the `@grammyjs/types` package;
 * "server" = the source of the Bot API server, public repository tdlib/telegram-bot-api.
 */
export interface Limits {
  /** Longest message text in UTF-16 units (reference: 1-4096 characters). */
  textChars: number;
  /** Longest caption in UTF-16 units (reference: 0-1024 characters). */
  captionChars: number;
  /** Longest `callback_data` in bytes (reference: 1-64 bytes). */
  callbackDataBytes: number;
  /** Longest answer to a button press (reference: 0-200 characters). */
  toastChars: number;
  /** Longest hint in the input field (reference: 1-64 characters). */
  placeholderChars: number;
  /** Items in an album (reference: 2-10). */
  albumMin: number;
  albumMax: number;
  /** Largest photo upload in bytes (reference: 10 MB). */
  photoBytes: number;
  /** Largest width + height of a photo in pixels (reference: 10000). */
  photoSideSum: number;
  /** Largest ratio of a photo's sides (reference: 20). */
  photoSideRatio: number;
  /** Largest upload of any other file in bytes (reference: 50 MB). */
  uploadBytes: number;
  /** Largest file that getFile hands out, in bytes (reference: 20 MB; server: 20 << 20). */
  downloadBytes: number;
  /** How long a file link works, in seconds (reference: at least 1 hour). */
  fileLinkSeconds: number;
  /** How long an update waits for the bot, in seconds (server: 86400 after the message's date). */
  updateSeconds: number;
  /** How long a button press waits for the bot, in seconds (server: 150). */
  pressSeconds: number;
  /** How long a press may be answered, in seconds (undocumented; 15 s by field reports). */
  answerSeconds: number;
  /** Oldest message that may be deleted, in seconds (reference: 48 hours). */
  deleteSeconds: number;
  /** Longest long poll, in seconds (server: 50). */
  pollSeconds: number;
  /** A short poll that repeats its offset within this many seconds is held so long (server: 3). */
  repeatedPollSeconds: number;
  /** A repeated offset within this many seconds gets one update only (server: 0.5). */
  hastyPollSeconds: number;
  /** Pause before the second and later answers 409 (server: 3). */
  conflictSeconds: number;
  /** Fewest seconds between two setWebhook calls (server: 1). */
  setWebhookSeconds: number;
  /** Bot commands per list (reference: at most 100). */
  commandsPerList: number;
  /** Entries kept in the record of calls; older ones are dropped. Ours. */
  recordedCalls: number;
}

const MEGABYTE = 1 << 20;
const DAY_SECONDS = 86_400;

/** The limits of the real platform. */
export const PLATFORM_LIMITS: Limits = {
  textChars: 4096,
  captionChars: 1024,
  callbackDataBytes: 64,
  toastChars: 200,
  placeholderChars: 64,
  albumMin: 2,
  albumMax: 10,
  photoBytes: 10 * MEGABYTE,
  photoSideSum: 10_000,
  photoSideRatio: 20,
  uploadBytes: 50 * MEGABYTE,
  downloadBytes: 20 * MEGABYTE,
  fileLinkSeconds: 3600,
  updateSeconds: DAY_SECONDS,
  pressSeconds: 150,
  answerSeconds: 15,
  deleteSeconds: 2 * DAY_SECONDS,
  pollSeconds: 50,
  repeatedPollSeconds: 3,
  hastyPollSeconds: 0.5,
  conflictSeconds: 3,
  setWebhookSeconds: 1,
  commandsPerList: 100,
  recordedCalls: 50_000,
};

/**
 * For tests that are not about polling or webhooks: the pauses of the real server are left out,
 * so that a client starts and stops at once. Everything else is as on the platform.
 */
export const LIMITS_WITHOUT_PAUSES: Limits = {
  ...PLATFORM_LIMITS,
  repeatedPollSeconds: 0,
  hastyPollSeconds: 0,
  conflictSeconds: 0,
  setWebhookSeconds: 0,
};
