/** The id of what stands for a card on the page: names of parts may hold anything. */
export function placeOf(card: string): string {
    return `card-${encodeURIComponent(card).replaceAll('%', '_')}`;
}

/** Takes the focus to the row of a card. */
export function goToCard(card: string): void {
    const row = document.getElementById(placeOf(card));
    row?.focus({ preventScroll: true });
    row?.scrollIntoView({ block: 'start' });
}

/** Up, down and the ends lead from row to row of the way; whether the key was one of these. */
export function walk(way: HTMLElement, key: string): boolean {
    const rows = [...way.querySelectorAll<HTMLElement>('.card-row')];
    const at = rows.findIndex(row => row === document.activeElement);
    if (at < 0) return false;
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: rows.length - 1 }[key];
    if (to === undefined) return false;
    rows[to]?.focus();
    return true;
}
