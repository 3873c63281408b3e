// Keys pressed while a page is on its way, as a gauge that types like a keyboard presses them: they wait and go into the
// page that comes. Enter then does what ends a reading; it never presses a button of a page that nobody has seen.
import {say} from "./notice.js";
import {said} from "./words.js";

const HELD = ["Enter", "Tab", "Backspace"];
const READING = /^[\d.,+−-]$/;
const GAUGE_MS = 1500;

const queue = [];
let holding = 0;
let stray = "";
let strayAt = 0;

export const isText = e => !!e && (e.tagName === "TEXTAREA"
    || (e.tagName === "INPUT" && ["text", "search", "tel", "url", "email"].includes(e.type)));

const seen = e => e.getClientRects().length > 0 && !e.closest("details:not([open])") && !e.disabled && !e.readOnly;

/** The first empty field for a reading, in this form before any other. */
export function emptyPad(form) {
    const all = Array.from(document.querySelectorAll("input[data-pad]")).filter(e => seen(e) && !e.value);
    return all.find(e => e.form === form) ?? all[0] ?? null;
}

/** Holds keys from now on until as many releases have come. */
export function hold() {
    holding++;
}

/** Lets the keys go: into the page, or, where that is refused, into words. */
export function release(taken = true) {
    holding = Math.max(0, holding - 1);
    if (holding) return;
    if (taken) feed();
    else spill(queue.splice(0).filter(key => key !== "Backspace"));
}

/** True where keys are held and this one went to them. */
export function held(key) {
    if (holding) queue.push(key);
    return holding > 0;
}

/** Types at the caret of a field as a key does. */
export function type(field, text) {
    const end = field.selectionEnd ?? field.value.length;
    field.setRangeText(text, field.selectionStart ?? end, end, "end");
    field.dispatchEvent(new Event("input", {bubbles: true}));
}

export function erase(field) {
    const end = field.selectionEnd ?? field.value.length;
    const from = field.selectionStart === end ? Math.max(0, end - 1) : field.selectionStart;
    field.setRangeText("", from, end, "end");
    field.dispatchEvent(new Event("input", {bubbles: true}));
}

/** Enter in a field: its form may move on to the next, else the form is sent. */
export function enter(field) {
    const event = new KeyboardEvent("keydown", {key: "Enter", bubbles: true, cancelable: true});
    if (field.dispatchEvent(event)) field.form?.requestSubmit();
}

/** The field that held keys go to: the one that waits for typing, else the first empty one for a reading. */
function target(key) {
    const now = document.activeElement;
    if (isText(now) && !now.value) return now;
    return READING.test(key) || !isText(now) ? emptyPad(now?.form) : null;
}

function feed() {
    let field = null;
    const lost = [];
    while (queue.length && !holding) {
        const key = queue.shift();
        if (key === "Backspace") {
            if (field) erase(field);
        } else if (key === "Enter" || key === "Tab") {
            const next = field && key === "Tab" ? emptyPad(field.form) : null;
            if (lost.length && lost.at(-1) !== "Enter") lost.push("Enter");
            if (next) next.focus();
            else if (field && key === "Enter") enter(field);
            field = null;
        } else {
            field ??= lost.length && lost.at(-1) !== "Enter" ? null : target(key);
            if (!field) {
                lost.push(key);
            } else {
                field.focus();
                type(field, key);
            }
        }
    }
    spill(lost);
}

function spill(keys) {
    const words = keys.map(key => key === "Enter" || key === "Tab" ? "  " : key).join("").trim();
    if (words) say(said("Typed while the page changed, and in no field: {0}. Type it again where it belongs.", words));
}

/** A reading typed where no field waits: it goes to the first empty field for a reading, never to a button. */
function withoutField(event) {
    const now = document.activeElement;
    const fresh = Date.now() - strayAt > GAUGE_MS;
    if (fresh) stray = "";
    if (isText(now) || now?.tagName === "SELECT") {
        stray = "";
        return;
    }
    if (event.key === "Enter" && stray) {
        event.preventDefault();
        event.stopImmediatePropagation();
        say(said("Typed where no field waits: {0}. Type it again where it belongs.", stray));
        stray = "";
    } else if (READING.test(event.key) || (stray && event.key.length === 1)) {
        const field = stray ? null : emptyPad(null);
        event.preventDefault();
        if (field) {
            field.focus();
            type(field, event.key);
        } else {
            stray += event.key;
            strayAt = Date.now();
        }
    }
}

addEventListener("keydown", event => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || !event.isTrusted) return;
    if (holding && (event.key.length === 1 || HELD.includes(event.key))) {
        event.preventDefault();
        event.stopImmediatePropagation();
        if (!event.repeat) queue.push(event.key);
    } else if (event.key === "Enter" && event.repeat && event.target.tagName !== "TEXTAREA") {
        // a pedal held down signs one thing, not one on every page that comes
        event.preventDefault();
        event.stopImmediatePropagation();
    } else {
        withoutField(event);
    }
}, true);

// A keyboard on the screen names no keys, only what it types.
addEventListener("beforeinput", event => {
    if (!holding || event.inputType !== "insertText" || !event.data) return;
    event.preventDefault();
    queue.push(...event.data);
}, true);
