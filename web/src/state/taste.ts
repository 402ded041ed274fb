import { effect, signal } from '@preact/signals';
import type { Paper, Units } from '../core/wire';

export type Theme = 'as the system' | 'light' | 'dark';

/** What the reader likes, kept by the browser for the next time. */
export class Taste {
    readonly units = signal<Units>(held('liftwright units') === 'us' ? 'us' : 'si');
    readonly paper = signal<Paper>(held('liftwright paper') === 'letter' ? 'letter' : 'a4');
    readonly theme = signal<Theme>(themeOf(held('liftwright theme')));

    constructor() {
        const dark = matchMedia('(prefers-color-scheme: dark)');
        const system = signal(dark.matches);
        dark.addEventListener('change', event => {
            system.value = event.matches;
        });
        effect(() => {
            const theme = this.theme.value;
            const shown = theme === 'as the system' ? (system.value ? 'dark' : 'light') : theme;
            document.documentElement.dataset['theme'] = shown;
            hold('liftwright theme', theme);
        });
        effect(() => {
            hold('liftwright units', this.units.value);
        });
        effect(() => {
            hold('liftwright paper', this.paper.value);
        });
    }
}

function themeOf(text: string | null): Theme {
    return text === 'light' || text === 'dark' ? text : 'as the system';
}

function held(name: string): string | null {
    try {
        return localStorage.getItem(name);
    } catch {
        return null;
    }
}

function hold(name: string, value: string): void {
    try {
        localStorage.setItem(name, value);
    } catch {
        // Forbidden: then it is asked again next time.
    }
}
