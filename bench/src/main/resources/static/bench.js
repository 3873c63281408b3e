// The script of the bench: entry ids made here, nothing typed lost, Enter moves on, clocks run.
// Every page works without it; with it a dropped network loses nothing.
import {cards} from "./cards.js";
import {clocks} from "./clocks.js";
import {drawing} from "./drawing.js";
import {goesOn, keeps, sendWaiting, waits} from "./forms.js";
import {isText} from "./keys.js";
import {marks} from "./marks.js";
import {memory, since} from "./memory.js";
import * as notice from "./notice.js";
import {hands} from "./hands.js";
import {others} from "./others.js";
import {pad} from "./pad.js";
import {go, onEach, parts} from "./page.js";
import {said} from "./words.js";

let look = 0;

/** A page that tells how something goes looks again: for the parts it names, or as a whole unless someone is typing in it. */
function again() {
    clearTimeout(look);
    const going = document.querySelector("[data-again]");
    if (!going || since()) return;
    look = setTimeout(() => {
        if (going.dataset.parts) {
            parts(going.dataset.to, going.dataset.parts.split(" ")).then(again);
            return;
        }
        const now = document.activeElement;
        if (isText(now) || now.tagName === "SELECT") again();
        else go(location.href, {push: false, top: false}).then(again);
    }, Number(going.dataset.again));
}

/** What is wider than its place is reached and moved by the keyboard as well. */
function scrolls() {
    document.querySelectorAll(".scroll, .planpicture, .record").forEach(wide => {
        if (wide.scrollWidth <= wide.clientWidth) return;
        wide.tabIndex = 0;
        // an article is named as it is
        if (wide.tagName !== "ARTICLE") wide.setAttribute("role", "group");
        wide.setAttribute("aria-label", said("Wider than the screen: move it sideways"));
    });
}

onEach(() => {
    document.querySelectorAll("form[data-keep]").forEach(keeps);
    waits();
    document.querySelectorAll("form[data-on]").forEach(goesOn);
    document.querySelectorAll("[data-here]").forEach(e => { e.value = location.pathname + location.search; });
    document.querySelector(".way [aria-current=page]")?.scrollIntoView({block: "nearest", inline: "center"});
    pad();
    clocks();
    cards();
    drawing();
    hands();
    scrolls();
    marks();
    again();
    others();
    memory();
    notice.say("");
});
// a browser moves to the field that waits when it next draws, and keys may come before
if (document.activeElement === document.body) document.querySelector("[autofocus]")?.focus();
sendWaiting();
