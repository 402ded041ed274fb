import { signal } from '@preact/signals';
import type { AnswerDocument, Question, Told, Units } from '../core/wire';
import { ASKED, asked, changed, ended, told, unasked, type Rungs } from '../core/verdicts';
import type { Server } from './server';
import { nextTurn } from './turn';

/** Asks the questions anew when the rig has changed, and holds what was answered. */
export class Asks {
    readonly rungs = signal<Rungs>(unasked());
    private running: AbortController | undefined;

    constructor(
        private readonly server: Server,
        private readonly tell: (sentence: string) => void,
        /** The server holds another state of the rig than was asked of. */
        private readonly stale: () => void,
    ) {}

    /** The rig is another: what stands is of before. */
    changed(): void {
        this.running?.abort();
        this.running = undefined;
        this.rungs.value = changed(this.rungs.value);
    }

    /** Another rig altogether. */
    forget(): void {
        this.changed();
        this.rungs.value = unasked();
    }

    async ask(
        rig: string,
        revision: string,
        units: Units,
        questions: readonly Question[] = ASKED,
        profile?: string,
        /** Also what is known of this state of the rig is computed once more. */
        anew = false,
    ): Promise<void> {
        this.running?.abort();
        const running = new AbortController();
        this.running = running;
        this.rungs.value = asked(this.rungs.value, questions);
        const end = await this.server.stream(
            '/api/ask',
            {
                rig,
                base: revision,
                questions,
                units,
                to: 'whole',
                turn: nextTurn(),
                ...(profile === undefined ? {} : { profile }),
                ...(anew ? { anew } : {}),
            },
            running.signal,
            line => {
                if (this.running === running) {
                    this.rungs.value = told(this.rungs.value, revision, line as Told);
                }
            },
        );
        if (this.running !== running) return;
        this.running = undefined;
        // What came to its end has said so in its last line; the rest was cut off.
        this.rungs.value = ended(this.rungs.value, revision, true);
        if (end.kind !== 'fault') return;
        if (end.fault.fault === 'stale') this.stale();
        else this.tell(end.fault.sentence);
    }

    /** What is known of a question now, without asking it again. */
    learn(question: Question, document: AnswerDocument): void {
        const { of } = this.rungs.value[question];
        if (of === undefined) return;
        this.rungs.value = told(this.rungs.value, of, { stage: 'whole', question, document });
    }

    /** What was answered stays. */
    stop(revision: string): void {
        this.running?.abort();
        this.running = undefined;
        this.rungs.value = ended(this.rungs.value, revision, true);
    }
}
