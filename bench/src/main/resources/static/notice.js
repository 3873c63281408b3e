// The box at the top of a page that says what is not kept, and what became of keys no field took.
import * as unsent from "./unsent.js";
import {said} from "./words.js";

/** What the buttons do: an entry is taken back, or put right. */
const does = {};
/** Of what waits so many are named in one line. */
const SHOWN = 5;
let word = "";
let unfolded = false;
let pictures = [];

/** Says what is done by the buttons of this box. */
export function on(acts) {
    Object.assign(does, acts);
}

/** One sentence of this moment; empty takes it away. */
export function say(text) {
    word = text;
    show();
}

function button(item, words, press) {
    const made = document.createElement("button");
    made.type = "button";
    made.className = "second";
    made.textContent = words;
    made.addEventListener("click", press);
    item.append(" ", made);
}

/** An entry in the list, with the pictures that wait in it. */
function line(list, entry, text) {
    const item = document.createElement("li");
    item.append(text);
    for (const [, value] of entry.fields) {
        if (!(value instanceof File) || !value.size) continue;
        const picture = new Image();
        picture.src = URL.createObjectURL(value);
        picture.alt = value.name;
        pictures.push(picture.src);
        item.prepend(picture);
    }
    list.append(item);
    return item;
}

function part(box, sentence, entries, fill) {
    const p = document.createElement("p");
    p.textContent = sentence;
    box.append(p);
    if (!entries.length) return;
    const list = document.createElement("ul");
    entries.forEach(entry => fill(list, entry));
    box.append(list);
}

/** What waits, in one line that leaves the screen to the work; opened, each with its pictures and a way back. */
function folded(box, waiting) {
    const all = document.createElement("details");
    const line1 = document.createElement("summary");
    const last = waiting.slice(-SHOWN).map(entry => entry.words);
    line1.textContent = said(unsent.silent() ? "Not kept yet: the bench server does not answer." : "Not sent yet.") + " "
        + (waiting.length === 1 ? said("One entry waits") : said("{0} entries wait", waiting.length))
        + said(waiting.some(unsent.loose) ? "; leave this page open, some of it waits only here:" : ", also when this page is closed:") + " "
        + (waiting.length > SHOWN ? "… " : "") + last.join("; ");
    const list = document.createElement("ol");
    all.append(line1, list);
    const fill = () => {
        if (all.open && !list.hasChildNodes()) {
            waiting.forEach(entry => button(line(list, entry, entry.words), said("Take it back"), () => does.back(entry.id)));
        }
    };
    all.open = unfolded;
    fill();
    all.addEventListener("toggle", () => {
        unfolded = all.open;
        fill();
    });
    box.append(all);
}

export function show() {
    const box = document.getElementById("not-kept");
    if (!box) return;
    // what stands there as it is stays under the finger
    const now = JSON.stringify([word, unsent.silent(), unsent.refused(), unsent.waiting().map(e => [e.id, unsent.behind(e.id), unsent.loose(e)])]);
    if (box.dataset.shown === now) return;
    box.dataset.shown = now;
    pictures.forEach(URL.revokeObjectURL);
    pictures = [];
    const refused = unsent.refused();
    const waiting = unsent.waiting().filter(entry => unsent.silent() || unsent.behind(entry.id));
    box.replaceChildren();
    if (refused.length) {
        part(box, said("Sent later and not kept. Put it right or drop it; what was typed after it waits until then:"), refused,
            (list, entry) => {
                const item = line(list, entry, entry.words + ": " + entry.faults.join(" "));
                button(item, said("Put it right"), () => does.correct(entry.id));
                button(item, said("Drop it"), () => does.drop(entry.id));
            });
    }
    if (waiting.length) folded(box, waiting);
    if (word) part(box, word, []);
    box.hidden = !box.hasChildNodes();
}
