/** A number that a picture or a table shows: beside its text it carries every digit of the answer. */
export interface Shown {
    field: string;
    si: number;
    low?: number;
    high?: number;
    text: string;
}

/** Every number that says what it is (`data-si`, with `data-field` and its band), also where it is scrolled away. */
export function shownNumbers(): Shown[] {
    return [...document.querySelectorAll('[data-si]')].map(element => {
        const low = element.getAttribute('data-low');
        const high = element.getAttribute('data-high');
        return {
            field: element.getAttribute('data-field') ?? '',
            si: Number(element.getAttribute('data-si')),
            ...(low !== null && { low: Number(low) }),
            ...(high !== null && { high: Number(high) }),
            text: element.textContent.trim(),
        };
    });
}
