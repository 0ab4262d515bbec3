import { z } from "zod";
import { CauseGroup } from "./vocabulary.ts";

const Clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, "a time such as 07:30");
/** As `Hours` names them, Monday first. */
export const weekdays = [
  "monday",
  "tuesday",
  "wednesday",
  "thursday",
  "friday",
  "saturday",
  "sunday",
] as const;
const Hours = z.strictObject({ from: Clock, to: Clock });

const minutes = z.number().min(0).max(10_000);

/** What things cost in this district, in minutes of a technician's time; what is left out stays. */
const ShopRates = z.strictObject({
  /** One way, where the place is not known; counted twice. */
  travelMinutes: minutes.exactOptional(),
  /** A second trip, with ordering the part and the lost place in the day. */
  secondTripMinutes: minutes.exactOptional(),
  /** Fetching the machine and bringing it back. */
  collectMinutes: minutes.exactOptional(),
  /** A minute of the operator's time. */
  operatorMinute: z.number().min(0).max(10).exactOptional(),
  standstillPerHour: z
    .strictObject({ low: minutes, normal: minutes, high: minutes })
    .exactOptional(),
  callForHelpMinutes: minutes.exactOptional(),
});

/**
 * The shop's own settings: one checked file in the data folder, edited by the owner.
 * Every key but `name`, `phone` and `emergency` has a default.
 */
export const ShopSettings = z.strictObject({
  name: z.string().min(1).max(60),
  /** Where a person can be reached; shown to operators. */
  phone: z.string().min(3).max(30),
  /** Answers urgent calls outside the hours; absent: there is nobody. */
  onCallPhone: z.string().min(3).max(30).optional(),
  /** The local emergency number, shown alone when somebody is hurt or something burns. */
  emergency: z.string().min(2).max(20),
  /** Where people read what is kept of them. */
  privacyLink: z.url("a web address such as https://example.org/privacy").optional(),
  timeZone: z.string().default("UTC"),
  hours: z.partialRecord(z.enum(weekdays), Hours).default({}),
  /** Nobody is written to for what can wait; dangers are told at any hour. */
  quietHours: Hours.default({ from: "21:00", to: "07:00" }),
  languages: z
    .array(z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/, "a language such as en or pt-BR"))
    .min(1)
    .default(["en"]),
  place: z.strictObject({ latitude: z.number(), longitude: z.number() }).optional(),
  /** Road distance ÷ great-circle distance. */
  roadFactor: z.number().min(1).max(3).default(1.3),
  /** Average driving speed, km/h. */
  roadSpeed: z.number().min(5).max(130).default(50),
  /** Typical outdoor temperature of each month, °C, January first. */
  monthlyTemperatures: z.array(z.number().min(-60).max(60)).length(12).optional(),
  /** The shop's own part numbers and stock: a table in the same folder. */
  partFile: z
    .string()
    .regex(/^[^/\\]+\.csv$/, "a file in the same folder, such as parts.csv")
    .optional(),
  rates: ShopRates.default({}),
  /** What people of the shop are good at, in the shop's own words, and the kinds of causes it covers. */
  skills: z.record(z.string().min(2).max(24), z.array(CauseGroup).min(1)).default({}),
  /** Same machine and complaint again within this many days counts as a comeback. */
  comebackDays: z.int().min(1).max(365).default(30),
});
export type ShopSettings = z.infer<typeof ShopSettings>;
