/** Reads tokens of the look as colours that a canvas knows. */
export function colours(home: HTMLElement): (token: string) => string {
    const probe = document.createElement('span');
    probe.hidden = true;
    home.append(probe);
    return token => {
        probe.style.color = `var(${token})`;
        return getComputedStyle(probe).color;
    };
}
