import { signal } from '@preact/signals';
import { changesOf, type Sensitivity, type SensitivityTold } from '../core/compare';
import { Latest } from '../core/latest';
import type { Question } from '../core/wire';
import type { Where } from './cards';
import type { Server } from './server';
import type { Trial } from './trial';
import { nextTurn } from './turn';

export interface Sensed {
    question: Question;
    /** The state of the rig that it speaks of. */
    of: string;
    state: 'asking' | 'told' | 'stopped' | 'refused';
    judged?: string;
    inputs: Sensitivity[];
    progress?: { stage: string; done: number; total: number };
    refused?: string;
}

/** The declared values that move a verdict most, and where their sliders stand. */
export class Sensing {
    readonly now = signal<Sensed | undefined>(undefined);
    /** Stops that were moved to, by path. */
    readonly at = signal<ReadonlyMap<string, number>>(new Map());
    private running: AbortController | undefined;
    /** One trial at a time: while it is answered the hand may go on, and the last place follows. */
    private readonly trying = new Latest<Where>(where => {
        const { changes, label } = changesOf(this.now.peek()?.inputs ?? [], this.at.peek());
        if (changes.length === 0) {
            this.trial.let();
            return undefined;
        }
        return this.trial.start(where.rig, where.revision, where.units, label, changes, true);
    });

    constructor(
        private readonly server: Server,
        private readonly trial: Trial,
        private readonly where: () => Where | undefined,
    ) {}

    async ask(question: Question): Promise<void> {
        this.running?.abort();
        const where = this.where();
        if (where === undefined) return;
        const running = new AbortController();
        this.running = running;
        this.at.value = new Map();
        this.now.value = { question, of: where.revision, state: 'asking', inputs: [] };
        const end = await this.server.stream(
            '/api/sensitivities',
            {
                rig: where.rig,
                base: where.revision,
                units: where.units,
                question,
                turn: nextTurn(),
            },
            running.signal,
            line => {
                if (this.running === running) this.hear(line as SensitivityTold);
            },
        );
        if (this.running !== running) return;
        this.running = undefined;
        const now = this.now.value;
        if (end.kind === 'fault') {
            this.now.value = { ...now, state: 'refused', refused: end.fault.sentence };
        } else if (now.state === 'asking') {
            this.now.value = { ...now, state: 'stopped' };
        }
    }

    private hear(line: SensitivityTold): void {
        const now = this.now.value;
        if (now === undefined) return;
        if ('sensitivities' in line) {
            this.now.value = {
                ...now,
                state: 'told',
                judged: line.judged,
                inputs: line.sensitivities,
            };
        } else if ('progress' in line) {
            this.now.value = { ...now, progress: line.progress };
        } else if ('refused' in line) {
            this.now.value = { ...now, state: 'refused', refused: line.refused };
        }
    }

    /** A slider was moved: the questions answer anew, in memory alone. */
    move(path: string, stop: number): void {
        const where = this.where();
        if (where === undefined) return;
        this.at.value = new Map(this.at.value).set(path, stop);
        this.trying.offer(where);
    }

    /** What was tried was kept or let go: all stand where the file says. */
    settle(): void {
        this.at.value = new Map();
        this.trying.drop();
    }

    forget(): void {
        this.running?.abort();
        this.running = undefined;
        this.now.value = undefined;
        this.settle();
    }
}
