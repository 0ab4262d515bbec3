import { z } from "zod";

/**
 * A schema that accepts exactly what the type allows: the compiler refuses one that lets more
 * through and one that has fallen behind the type (a new kind of event, a new member of a list).
 * A key that a schema does not know is kept as it is, because what was read is checked, not copied.
 */
export const exactly =
  <T>() =>
  <S extends z.ZodType<T>>(schema: S & ([T] extends [z.output<S>] ? unknown : never)): S =>
    schema;

/** A list nobody may change. */
export const list = <S extends z.ZodType>(item: S) => z.array(item).readonly();

export const text = z.string();
export const whole = z.int().nonnegative();
