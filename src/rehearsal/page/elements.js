/**
 * Makes an element. Texts are texts: nothing that people or the bot write is taken for markup.
 * @param {string} tag
 * @param {Record<string, unknown>} [set] attributes; `on…` are listeners, false and null leave out
 * @param {...(Node | string | null)} children
 */
export function make(tag, set = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(set)) {
    if (value === false || value === null || value === undefined) continue;
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...children.filter((child) => child !== null && child !== ""));
  return element;
}

/**
 * A button that does something and cannot be pressed again until that is done. It is not disabled
 * meanwhile: a disabled button loses the keyboard.
 */
export function makeButton(label, act, set = {}) {
  let busy = false;
  const press = async () => {
    if (busy) return;
    busy = true;
    button.setAttribute("aria-busy", "true");
    try {
      await act();
    } finally {
      busy = false;
      button.removeAttribute("aria-busy");
    }
  };
  const button = make("button", { type: "button", ...set, onclick: press });
  button.append(label);
  return button;
}

/**
 * Sends a wish to the room.
 * @returns {Promise<string>} a sentence that says what went wrong; "" where nothing did
 */
export async function send(path, wish = {}) {
  const isPhoto = wish instanceof Blob;
  try {
    const answer = await fetch(path, {
      method: "POST",
      headers: { "content-type": isPhoto ? wish.type : "application/json" },
      body: isPhoto ? wish : JSON.stringify(wish),
    });
    if (answer.ok) return "";
    const { problem, description } = await answer.json();
    return problem ?? description ?? `The room answered ${answer.status}.`;
  } catch {
    return "The room does not answer. Is the program still running?";
  }
}
