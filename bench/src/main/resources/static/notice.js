// The box at the top of a page that says what is not kept, and what became of keys no field took.
import * as unsent from "./unsent.js";

let word = "";

/** One sentence of this moment; empty takes it away. */
export function say(text) {
    word = text;
    show();
}

function line(list, text, button, press) {
    const item = document.createElement("li");
    item.textContent = text + " ";
    if (button) {
        const forget = document.createElement("button");
        forget.type = "button";
        forget.className = "second";
        forget.textContent = button;
        forget.addEventListener("click", press);
        item.append(forget);
    }
    list.append(item);
}

function part(box, sentence, fill) {
    const p = document.createElement("p");
    p.textContent = sentence;
    box.append(p);
    if (!fill) return;
    const list = document.createElement("ul");
    fill(list);
    box.append(list);
}

export function show() {
    const box = document.getElementById("not-kept");
    if (!box) return;
    const waiting = unsent.waiting();
    const refused = unsent.refused();
    box.replaceChildren();
    if (waiting.length && unsent.silent()) {
        const loose = waiting.some(entry => entry.file) ? " Leave this page open: a picture waits only here." : "";
        part(box, "Not kept yet: the bench server does not answer. What waits here is sent by itself, in this order, "
            + "also when this page was closed." + loose, list => waiting.forEach(entry => line(list, entry.words)));
    }
    if (refused.length) {
        part(box, "Sent later and not kept:", list => refused.forEach(entry => line(list,
            entry.words + ": " + entry.faults.join(" "), "Forget it", () => {
                unsent.forget(entry.id);
                show();
            })));
    }
    if (word) part(box, word);
    box.hidden = !box.hasChildNodes();
}
