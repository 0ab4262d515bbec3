import { make, makeButton, send } from "./elements.js";
import { makePhone } from "./phone.js";

const byId = (id) => document.getElementById(id);
const say = (text, broken = false) => {
  byId("state").textContent = text;
  byId("state").classList.toggle("broken", broken);
};

const room = await (await fetch("/room/scenario")).json();
byId("title").textContent = room.title;
byId("about").textContent = room.about;

const phones = new Map(room.phones.map((phone) => [phone.id, makePhone(phone, room, openLink)]));
byId("phones").replaceChildren(...[...phones.values()].map(({ element }) => element));

/** Follows a link inside the room; one that leads elsewhere is only named. */
function openLink(link, phone) {
  const payload = payloadOf(link);
  if (payload === null) {
    say(`This link leads out of the room and is not opened here: ${link}`, true);
    return;
  }
  if (phone) return startOn(phone, payload);
  byId("link-text").textContent = link;
  const choices = room.phones.map((one) =>
    makeButton(`${one.role}: ${one.name}`, () => {
      byId("link").close();
      return startOn(one, payload);
    }),
  );
  byId("link-phones").replaceChildren(...choices);
  byId("link").showModal();
}

function payloadOf(link) {
  const found = /^(?:https?:\/\/)?t\.me\/([A-Za-z0-9_]+)\?start=([A-Za-z0-9_-]{1,64})$/.exec(link);
  return found?.[1].toLowerCase() === room.bot.username.toLowerCase() ? found[2] : null;
}

async function startOn(phone, payload) {
  say(await send(`/room/phones/${phone.id}/start`, { payload }));
}

if (room.canPlay) {
  const play = byId("play");
  play.hidden = false;
  play.addEventListener("click", async () => {
    play.disabled = true;
    say("Playing the call … watch the three phones.");
    say(await send("/room/play"));
    play.disabled = false;
  });
}

// The browser connects again by itself; the room then tells how every phone looks.
const events = new EventSource("/room/events");
events.addEventListener("open", () => say(""));
events.addEventListener("error", () => say("The room does not answer. Waiting for it …", true));
events.addEventListener("phone", (event) => {
  const view = JSON.parse(event.data);
  phones.get(view.id)?.update(view);
});
addEventListener("pagehide", () => events.close());
document.body.append(make("div", { id: "ready", hidden: true }));
