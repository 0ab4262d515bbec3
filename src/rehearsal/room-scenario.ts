import type { PersonOptions } from "./people/person.ts";

/** One of the phones that lie side by side in the room. */
export interface RoomPhone {
  /** Short name in addresses, such as `operator`: a to z and "-". */
  readonly id: string;
  /** Whose phone it is, as people call the role. */
  readonly role: string;
  readonly person: PersonOptions;
  /** A sentence that says who this is and what they are about to do. */
  readonly about: string;
  /** Number and place the phone gives away when asked. */
  readonly phoneNumber: string;
  readonly place: { readonly latitude: number; readonly longitude: number };
  /** Things this person might write, offered for a tap. */
  readonly lines?: readonly string[];
}

/** A photo that people in the room can send. */
export interface RoomPicture {
  readonly id: string;
  readonly title: string;
  /** PNG or JPEG. */
  readonly bytes: Uint8Array;
}

/** Who plays, and what they can reach for. All of it invented by whoever opens the room. */
export interface RoomScenario {
  readonly title: string;
  readonly about: string;
  readonly phones: readonly RoomPhone[];
  /** Languages that a phone can be set to. */
  readonly languages: readonly { readonly tag: string; readonly name: string }[];
  readonly pictures: readonly RoomPicture[];
}
