// What a script says, in the words of the page: the page brings the sentences with it, where it is not in English.
const brought = document.getElementById("words");
const known = brought ? JSON.parse(brought.textContent) : {};

/** A sentence with its values; with a second form where a number among them is not one. */
export function said(sentence, ...values) {
    const forms = known[sentence] ?? [sentence];
    const many = forms.length > 1 && values.some(value => typeof value === "number" && value !== 1);
    return forms[many ? 1 : 0].replace(/\{(\d)\}/g, (_, at) => String(values[at]));
}
