// Clocks that run down on the page: they are of the log, so every screen shows the same. One that ends is heard.
import {said} from "./words.js";
const AGAIN_MS = 15000;

let sound = null;
let rung = 0;

function spoken(ms) {
    const s = Math.round(Math.abs(ms) / 1000);
    const h = Math.floor(s / 3600), m = Math.floor(s / 60) % 60;
    const two = n => String(n).padStart(2, "0");
    return h ? h + ":" + two(m) + ":" + two(s % 60) : m + ":" + two(s % 60);
}

/** Two short tones; a browser gives none before the page was touched once. */
function ring() {
    if (document.documentElement.classList.contains("silent") || !sound || sound.state !== "running") return;
    for (const [at, pitch] of [[0, 880], [0.35, 1175]]) {
        const tone = sound.createOscillator();
        const loud = sound.createGain();
        tone.frequency.value = pitch;
        loud.gain.setValueAtTime(0.3, sound.currentTime + at);
        loud.gain.exponentialRampToValueAtTime(0.001, sound.currentTime + at + 0.3);
        tone.connect(loud).connect(sound.destination);
        tone.start(sound.currentTime + at);
        tone.stop(sound.currentTime + at + 0.3);
    }
}

const heard = timer => sessionStorage.getItem("heard-" + timer.dataset.until) !== null;

export function tick() {
    let calls = false;
    document.querySelectorAll("[data-until]").forEach(timer => {
        const left = Number(timer.dataset.until) - Date.now();
        const over = left < 0;
        timer.classList.toggle("over", over && timer.dataset.must === "true");
        timer.querySelector(".left").textContent = over
            ? (timer.dataset.must === "true" ? said("over by {0}", spoken(left)) : said("ended")) : said("{0} left", spoken(left));
        const button = timer.querySelector("[data-heard]");
        if (button) button.hidden = !over || heard(timer);
        calls ||= over && !heard(timer);
    });
    if (calls && Date.now() - rung > AGAIN_MS) {
        rung = Date.now();
        ring();
    }
}

/** Buttons that hush a clock that has ended. */
export function clocks() {
    document.querySelectorAll("[data-heard]").forEach(button => button.addEventListener("click", () => {
        sessionStorage.setItem("heard-" + button.closest("[data-until]").dataset.until, "");
        tick();
    }));
    tick();
}

for (const touch of ["pointerdown", "keydown"]) {
    addEventListener(touch, () => {
        sound ??= "AudioContext" in window ? new AudioContext() : null;
        sound?.resume();
    });
}
setInterval(tick, 1000);
