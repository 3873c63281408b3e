// The drawing beside a form shows what is typed in it before it is kept.
const SETTLED_MS = 600;
let wait = 0;
let asked = 0;

async function draw(form, place) {
    const mine = ++asked;
    try {
        const answer = await fetch(place.dataset.draws, {method: "POST", body: new URLSearchParams(new FormData(form))});
        const text = await answer.text();
        if (mine !== asked || !place.isConnected) return;
        if (answer.ok || answer.status === 422) place.innerHTML = text;
    } catch (unreached) {
        // the drawing stays as it was; keeping says what is amiss
    }
}

/** What stands in the form is drawn once nobody types for a moment. */
export function drawing() {
    clearTimeout(wait);
    const place = document.querySelector("[data-draws]");
    const form = place && document.getElementById(place.dataset.form);
    form?.addEventListener("input", () => {
        clearTimeout(wait);
        wait = setTimeout(() => draw(form, place), SETTLED_MS);
    });
}
