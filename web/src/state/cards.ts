import { signal } from '@preact/signals';
import { asked, ended, told, unasked, type Rungs } from '../core/verdicts';
import type { Outcome, Paper, Recorded, Told, Units } from '../core/wire';
import { saveBlob } from './save';
import type { Server } from './server';
import { nextTurn } from './turn';

/** Where the rig stands that a card is asked of. */
export interface Where {
    rig: string;
    revision: string;
    units: Units;
}

/** The card that lies open: asked for when it is opened and when the rig has changed; kept on paper, passed. */
export class Cards {
    readonly open = signal<string | undefined>(undefined);
    /** Of the rungs that of the trials alone: the answer that holds the card. */
    readonly rungs = signal<Rungs>(unasked());
    private running: AbortController | undefined;

    constructor(
        private readonly server: Server,
        private readonly where: () => Where | undefined,
        private readonly tell: (sentence: string) => void,
        /** A pass was written: what is proved is another now. */
        private readonly passed: () => void,
    ) {}

    /** Opens a card, or closes it where it lies open. */
    turn(card: string): void {
        this.stop();
        this.rungs.value = unasked();
        this.open.value = this.open.value === card ? undefined : card;
        void this.ask();
    }

    /** Opens a card and leaves it open. */
    show(card: string): void {
        if (this.open.value !== card) this.turn(card);
    }

    /** The rig is another: what is read on the card is of before until it comes anew. */
    changed(readable: boolean): void {
        this.stop();
        if (readable) void this.ask();
    }

    /** Another rig altogether. */
    forget(): void {
        this.stop();
        this.rungs.value = unasked();
        this.open.value = undefined;
    }

    stop(): void {
        const running = this.running;
        this.running = undefined;
        running?.abort();
        const where = this.where();
        if (where !== undefined) this.rungs.value = ended(this.rungs.value, where.revision, true);
    }

    async ask(): Promise<void> {
        const where = this.where();
        const card = this.open.value;
        if (where === undefined || card === undefined) return;
        this.stop();
        const running = new AbortController();
        this.running = running;
        this.rungs.value = asked(this.rungs.value);
        const { rig, revision, units } = where;
        const end = await this.server.stream(
            '/api/card',
            { rig, base: revision, units, card, turn: nextTurn() },
            running.signal,
            line => {
                if (this.running === running) {
                    this.rungs.value = told(this.rungs.value, revision, line as Told);
                }
            },
        );
        if (this.running !== running) return;
        this.running = undefined;
        this.rungs.value = ended(this.rungs.value, revision, true);
        // A rig that is another by now is asked anew by whoever changed it.
        if (end.kind === 'fault' && end.fault.fault !== 'stale') {
            const refused = end.fault.sentence;
            this.rungs.value = told(this.rungs.value, revision, { refused, question: 'trials' });
        }
    }

    /** A card, or with `today` the sheet of the day, as a file to print. */
    async keep(card: string, form: 'pdf' | 'html', paper: Paper): Promise<void> {
        const where = this.where();
        if (where === undefined) return;
        const { rig, revision, units } = where;
        this.tell('The sheet is being made.');
        const reply = await this.server.file('/api/sheet', {
            rig,
            base: revision,
            units,
            card,
            form,
            paper,
        });
        if (reply.kind !== 'done') {
            this.tell(reply.kind === 'fault' ? reply.fault.sentence : NO_ANSWER);
            return;
        }
        saveBlob(reply.value, `${card.replace(/[^\w.-]+/g, '-')}-${paper}.${form}`);
        this.tell('The sheet is saved.');
    }

    /** Writes what came of a card; whether it was written, and the sentence that says so or why not. */
    async record(card: string, outcome: Outcome): Promise<{ done: boolean; sentence: string }> {
        const where = this.where();
        if (where === undefined) return { done: false, sentence: NO_ANSWER };
        const { rig, revision } = where;
        const reply = await this.server.call<Recorded>('/api/pass', {
            rig,
            base: revision,
            card,
            ...outcome,
        });
        if (reply.kind === 'done') {
            this.passed();
            return { done: true, sentence: reply.value.sentence };
        }
        return { done: false, sentence: reply.kind === 'fault' ? reply.fault.sentence : LOST };
    }
}

const NO_ANSWER = 'The server does not answer: is liftwright open still running?';
const LOST =
    'No reply came: look into the folder of passes beside the rig file before you record it again.';
