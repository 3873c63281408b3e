// Clocks that run down on the page.
function spoken(ms) {
    const s = Math.round(Math.abs(ms) / 1000);
    const h = Math.floor(s / 3600), m = Math.floor(s / 60) % 60;
    const two = n => String(n).padStart(2, "0");
    return h ? h + ":" + two(m) + ":" + two(s % 60) : m + ":" + two(s % 60);
}

export function tick() {
    document.querySelectorAll("[data-until]").forEach(timer => {
        const left = Number(timer.dataset.until) - Date.now();
        const over = left < 0;
        timer.classList.toggle("over", over && timer.dataset.must === "true");
        timer.querySelector(".left").textContent = over
            ? (timer.dataset.must === "true" ? "over by " + spoken(left) : "ended") : spoken(left) + " left";
    });
}

/** Buttons that start a clock. */
export function clocks() {
    document.querySelectorAll("[data-clock]").forEach(button => button.addEventListener("click", () => {
        const timer = document.createElement("p");
        timer.className = "timer must";
        timer.dataset.until = String(Date.now() + Number(button.dataset.clock) * 1000);
        timer.dataset.must = "true";
        timer.innerHTML = "<b>Window</b> <span class=\"left\"></span>";
        button.replaceWith(timer);
        tick();
    }));
    tick();
}

setInterval(tick, 1000);
