// A number pad for greasy hands, shown on touch screens while a reading is typed. It never covers the field it types into.
import * as keys from "./keys.js";
import {said} from "./words.js";

const KEYS = ["7", "8", "9", ".", "−", "⌫", "4", "5", "6", "0", " ", "±", "1", "2", "3", "mm", "in", "Enter"];
const AIR = 12;

let box = null;
let into = null;
let pressing = false;

/** Makes the pad of a page that has fields for readings. */
export function pad() {
    close();
    box = null;
    const inputs = document.querySelectorAll("input[data-pad]");
    if (!inputs.length || !matchMedia("(pointer: coarse)").matches) return;
    box = document.createElement("div");
    box.className = "pad";
    box.hidden = true;
    KEYS.forEach(key => box.append(button(key)));
    document.body.append(box);
    inputs.forEach(input => {
        input.inputMode = "none";
        input.addEventListener("focus", () => open(input));
        // a touch elsewhere first does what it touches: the page must not move away under it
        input.addEventListener("blur", () => { if (!pressing) close(); });
    });
    if (document.activeElement?.matches("input[data-pad]")) open(document.activeElement);
}

function button(key) {
    const made = document.createElement("button");
    made.type = "button";
    made.tabIndex = -1;
    made.textContent = key === " " ? "␣" : key === "Enter" ? said("Enter") : key;
    if (key === "Enter") made.className = "go";
    if (key === "mm" || key === "in") made.dataset.unit = key;
    made.addEventListener("pointerdown", event => {
        event.preventDefault();
        if (into) press(made.dataset.unit ? made.textContent : key, made.dataset.unit);
    });
    return made;
}

function open(input) {
    into = input;
    const units = (input.dataset.units ?? "mm|in").split("|");
    box.querySelectorAll("[data-unit]").forEach((key, i) => {
        key.textContent = units[i] || "";
        key.style.visibility = units[i] ? "visible" : "hidden";
    });
    box.hidden = false;
    document.body.classList.add("padded");
    document.body.style.setProperty("--pad", box.offsetHeight + "px");
    clear();
}

function close() {
    into = null;
    if (box) box.hidden = true;
    document.body.classList.remove("padded");
}

/** Moves the page so that the field stands above the pad, and below the upper edge. */
function clear() {
    if (!into || !box || box.hidden) return;
    const field = into.getBoundingClientRect();
    const pad = box.getBoundingClientRect();
    const over = pad.top > 0 ? field.bottom + AIR - pad.top : field.bottom + AIR - innerHeight;
    if (over > 0) scrollBy(0, Math.min(over, field.top - AIR));
    else if (field.top < AIR) scrollBy(0, field.top - AIR);
}

function press(key, unit) {
    const field = into;
    if (keys.held(key === "⌫" ? "Backspace" : key === "−" ? "-" : key)) return;
    if (key === "Enter") keys.enter(field);
    else if (key === "⌫") keys.erase(field);
    else if (unit) {
        field.value = field.value.replace(/\s*[^\d\s.,±+-][^\d]*$/, "");
        field.setSelectionRange(field.value.length, field.value.length);
        keys.type(field, " " + key);
    } else keys.type(field, key === "−" ? "-" : key);
}

addEventListener("resize", clear);
addEventListener("pointerdown", () => { pressing = true; }, true);
for (const end of ["click", "pointercancel"]) {
    addEventListener(end, () => {
        pressing = false;
        if (into && document.activeElement !== into) setTimeout(() => { if (into && document.activeElement !== into) close(); });
    });
}
