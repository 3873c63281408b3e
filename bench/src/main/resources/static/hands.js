// Hands that are busy: a step read aloud, a pedal for the main button, a screen that stays on.
import {isText} from "./keys.js";

const root = document.documentElement;
const SAID = ".step > .at, .step > h1, .step > .wait, .step > .trap, .step > .oneway, .step > .with dt, .step > .with dd, .step > .caution, .step > .hold h2, .step > .hold p";

let read = "";
let lock = null;

/** What stands at the step, as sentences. */
function words() {
    return Array.from(document.querySelectorAll(SAID))
        .filter(e => e.getClientRects().length)
        .map(e => Array.from(e.childNodes)
            .filter(n => n.nodeType === Node.TEXT_NODE || !n.matches?.(".button, details, form, ul"))
            .map(n => n.textContent).join(" ").replace(/\s+/g, " ").replace(/[·×]/g, ",").trim())
        .filter(text => text)
        .map(text => /[.:?!]$/.test(text) ? text : text + ".")
        .join(" ");
}

function say() {
    speechSynthesis.cancel();
    const spoken = new SpeechSynthesisUtterance(words());
    spoken.lang = root.lang;
    speechSynthesis.speak(spoken);
}

function aloud() {
    const button = document.querySelector("[data-aloud]");
    const step = document.querySelector("[data-step]")?.dataset.step ?? "";
    if (!("speechSynthesis" in window)) return;
    if (step !== read) speechSynthesis.cancel();
    if (button) {
        button.hidden = false;
        button.addEventListener("click", () => { if (speechSynthesis.speaking) speechSynthesis.cancel(); else say(); });
    }
    if (step && step !== read && root.classList.contains("aloud")) say();
    read = step;
}

/** Kept on while a job is open, where the person wants it, or a clock runs. */
async function awake() {
    const wanted = document.querySelector(".injob") && (root.classList.contains("awake") || document.querySelector(".timer"));
    try {
        if (!wanted) {
            await lock?.release();
            lock = null;
        } else if (!lock || lock.released) {
            lock = await navigator.wakeLock?.request("screen") ?? null;
        }
    } catch (refused) {
        // a device that will not is left as it is
    }
}

export function hands() {
    aloud();
    awake();
    document.querySelectorAll("[data-pedal-key]").forEach(field => field.addEventListener("keydown", event => {
        if (event.key === "Tab" || event.key === "Backspace" || event.key === "Delete") return;
        event.preventDefault();
        event.stopPropagation();
        field.value = event.code;
    }));
}

addEventListener("visibilitychange", awake);

addEventListener("keydown", event => {
    const pedal = root.dataset.pedal;
    if (!pedal || event.code !== pedal || event.target.matches?.("[data-pedal-key]")) return;
    const typing = isText(document.activeElement) && document.activeElement.value;
    if (typing && event.key.length === 1) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (event.repeat) return;
    const main = Array.from(document.querySelectorAll("main button.main, main .button.main")).find(e => e.getClientRects().length);
    main?.click();
}, true);
