/** Something the reader can do. Menu, key and button run this one object. */
export interface Action {
    id: string;
    /** A verb, as a button says it. */
    label: () => string;
    /** "Ctrl+S"; several with a space between. Ctrl stands for Command where that is the custom. */
    keys?: string;
    enabled: () => boolean;
    run: () => void;
}

export interface Stroke {
    key: string;
    ctrlKey: boolean;
    metaKey: boolean;
    altKey: boolean;
    shiftKey: boolean;
}

/** How a stroke is written in `keys`. */
export function strokeName(stroke: Stroke): string {
    const key = stroke.key.length === 1 ? stroke.key.toUpperCase() : stroke.key;
    const letter = stroke.key.length === 1 && stroke.key.toLowerCase() !== stroke.key.toUpperCase();
    return [
        stroke.ctrlKey || stroke.metaKey ? 'Ctrl+' : '',
        stroke.altKey ? 'Alt+' : '',
        // The shift of "?" is how it is typed and not what is meant.
        stroke.shiftKey && (letter || stroke.key.length > 1) ? 'Shift+' : '',
        key,
    ].join('');
}

export function actionFor(actions: Action[], stroke: Stroke): Action | undefined {
    const name = strokeName(stroke);
    return actions.find(action => action.keys?.split(' ').includes(name));
}

/** Two actions on one key would be a matter of luck. */
export function keysTwice(actions: Action[]): string[] {
    const seen = new Set<string>();
    const twice: string[] = [];
    for (const key of actions.flatMap(action => action.keys?.split(' ') ?? [])) {
        if (seen.has(key)) twice.push(key);
        seen.add(key);
    }
    return twice;
}
