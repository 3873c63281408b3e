// What another bench kept comes into an open page by itself: the page carries the mark of what it shows and asks whether it
// still holds. Where someone is typing or choosing, nothing moves under the hand; a sentence says that there is more.
import {typedFields} from "./drafts.js";
import {isText} from "./keys.js";
import {since} from "./memory.js";
import {say} from "./notice.js";
import {go} from "./page.js";
import {behind, waiting} from "./unsent.js";
import {said} from "./words.js";

const LOOK_MS = 2000;
const MORE = "Another bench has kept something that this page does not show yet. It comes by itself when you have sent or cleared what you typed.";
let timer = 0;
let told = "";

/** True where a new page would take something out of the hand. */
function busy() {
    const now = document.activeElement;
    if (isText(now) && !now.hasAttribute("autofocus") && now.closest("form[data-keep], form[data-on]")) return true;
    if (document.querySelector("main > .faults") || waiting().some(entry => !behind(entry.id))) return true;
    return Array.from(document.querySelectorAll("form[data-keep], form[data-on]")).some(form =>
        typedFields(form).some(e => e.value !== e.defaultValue)
        || Array.from(form.elements).some(e => e.type === "file" ? e.files.length
            : e.tagName === "SELECT" ? e.selectedIndex !== Math.max(0, Array.from(e.options).findIndex(o => o.defaultSelected))
            : e.checked !== undefined && e.checked !== e.defaultChecked));
}

/** The page anew where it is, with what was unfolded on it. */
async function renew() {
    const words = e => e.querySelector("summary")?.textContent;
    const open = Array.from(document.querySelectorAll("details[open]"), words);
    await go(location.href, {push: false, top: false});
    document.querySelectorAll("details").forEach(e => { if (open.includes(words(e))) e.open = true; });
}

async function look() {
    const mark = document.body.dataset.mark;
    if (mark && !document.hidden) {
        try {
            const answer = await fetch("/mark?of=" + encodeURIComponent(location.pathname));
            const now = answer.redirected ? "elsewhere" : answer.ok ? await answer.text() : mark;
            if ((now !== mark || since()) && document.body.dataset.mark === mark) {
                if (!busy()) await renew();
                else if (told !== now) say(said(MORE));
                told = now;
            }
        } catch (unreached) {
            // whoever sends something is told; until then this page stays
        }
    }
    timer = setTimeout(look, LOOK_MS);
}

/** Begins to look, once. */
export function others() {
    if (!timer) timer = setTimeout(look, LOOK_MS);
}
