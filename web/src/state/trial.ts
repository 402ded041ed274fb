import { signal } from '@preact/signals';
import { ASKED, DEAR, openFirst, told, unasked, type Rungs } from '../core/verdicts';
import type { Change, Question, Told, Units } from '../core/wire';
import type { Server } from './server';
import { nextTurn } from './turn';

/** A test was made with the rig of its day: what is tried now changes nothing about it. */
const MADE: Question = 'learning';

/** Changes that are made in memory only, with what the questions answer to them. */
export interface Tried {
    label: string;
    changes: Change[];
    /** The state of the rig they were tried on. */
    of: string;
    rungs: Rungs;
    state: 'asking' | 'answered' | 'refused';
    refused?: string;
}

export class Trial {
    readonly tried = signal<Tried | undefined>(undefined);
    private running: AbortController | undefined;

    constructor(
        private readonly server: Server,
        /** The question that lies open: it is answered before the others. */
        private readonly open: () => Question | undefined = () => undefined,
    ) {}

    async start(
        rig: string,
        revision: string,
        units: Units,
        label: string,
        changes: Change[],
        /** A hand waits for it: what takes long is asked only where it lies open. */
        quick = false,
    ): Promise<void> {
        this.running?.abort();
        const running = new AbortController();
        this.running = running;
        // While a part is dragged the last answer stays until the next comes: no flicker.
        const rungs = this.tried.value?.rungs ?? unasked();
        this.tried.value = { label, changes, of: revision, rungs, state: 'asking' };
        const end = await this.server.stream(
            '/api/try',
            { rig, base: revision, changes, questions: this.order(quick), units, turn: nextTurn() },
            running.signal,
            read => {
                const line = read as Told;
                const now = this.now();
                if (this.running !== running || now === undefined) return;
                const next = { ...now, rungs: told(now.rungs, revision, line) };
                this.tried.value =
                    'refused' in line ? { ...next, state: 'refused', refused: line.refused } : next;
            },
        );
        const now = this.now();
        if (this.running !== running || now === undefined) return;
        this.running = undefined;
        if (end.kind === 'fault') {
            this.tried.value = { ...now, state: 'refused', refused: end.fault.sentence };
        } else if (end.kind === 'lost') {
            this.tried.value = { ...now, state: 'refused', refused: 'The server does not answer.' };
        } else if (now.state === 'asking') {
            this.tried.value = { ...now, state: 'answered' };
        }
    }

    private order(quick: boolean): readonly Question[] {
        const open = this.open();
        return openFirst(
            open,
            ASKED.filter(
                each => each !== MADE && (each === open || !(quick && DEAR.includes(each))),
            ),
        );
    }

    private now(): Tried | undefined {
        return this.tried.value;
    }

    /** Nothing of it was written anywhere. */
    let(): void {
        this.running?.abort();
        this.running = undefined;
        this.tried.value = undefined;
    }
}
