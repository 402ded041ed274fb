import { signal } from '@preact/signals';
import { otherBody, type CompareTold, type Other } from '../core/compare';
import type { Told } from '../core/besides';
import type { AnswerDocument, Question } from '../core/wire';
import type { Where } from './cards';
import type { Server } from './server';
import { nextTurn } from './turn';

/** Two revisions beside each other, as far as they are compared. */
export interface ComparedNow {
    state: 'asking' | 'done' | 'stopped' | 'refused';
    /** The state of the rig that is the second of the two. */
    of: string;
    questions: readonly Question[];
    /** Nominal answers for their pictures, by question. */
    before: Told;
    after: Told;
    compared?: AnswerDocument;
    progress?: { stage: string; done: number; total: number };
    refused?: string;
}

export class Comparing {
    /** Whether it stands in place of the open question. */
    readonly open = signal(false);
    readonly other = signal<Other>({ kind: 'saved' });
    readonly now = signal<ComparedNow | undefined>(undefined);
    private running: AbortController | undefined;

    constructor(
        private readonly server: Server,
        private readonly where: () => Where | undefined,
    ) {}

    async start(questions: readonly Question[]): Promise<void> {
        this.running?.abort();
        const where = this.where();
        if (where === undefined) return;
        const running = new AbortController();
        this.running = running;
        this.now.value = {
            state: 'asking',
            of: where.revision,
            questions,
            before: {},
            after: {},
        };
        const end = await this.server.stream(
            '/api/compare',
            {
                rig: where.rig,
                base: where.revision,
                units: where.units,
                questions,
                ...otherBody(this.other.peek()),
                turn: nextTurn(),
            },
            running.signal,
            line => {
                if (this.running === running) this.hear(line as CompareTold);
            },
        );
        if (this.running !== running) return;
        this.running = undefined;
        const now = this.now.value;
        if (end.kind === 'fault') {
            this.now.value = { ...now, state: 'refused', refused: end.fault.sentence };
        } else if (now.state === 'asking') {
            this.now.value = { ...now, state: now.compared === undefined ? 'stopped' : 'done' };
        }
    }

    private hear(line: CompareTold): void {
        const now = this.now.value;
        if (now === undefined) return;
        if ('refused' in line) {
            this.now.value = { ...now, state: 'refused', refused: line.refused };
        } else if ('progress' in line) {
            this.now.value = { ...now, progress: line.progress };
        } else if ('before' in line) {
            const before = { ...now.before, [line.before.answer.question]: line.before };
            this.now.value = { ...now, before };
        } else if ('after' in line) {
            const after = { ...now.after, [line.after.answer.question]: line.after };
            this.now.value = { ...now, after };
        } else if (!('end' in line)) {
            this.now.value = { ...now, ...line };
        }
    }

    stop(): void {
        this.running?.abort();
        this.running = undefined;
        const now = this.now.peek();
        if (now?.state === 'asking') this.now.value = { ...now, state: 'stopped' };
    }

    /** Another rig altogether. */
    forget(): void {
        this.stop();
        this.now.value = undefined;
        this.other.value = { kind: 'saved' };
        this.open.value = false;
    }
}
