import type { Caller, Reply, Timer } from './caller';
import { merge } from './merge';
import type { Keep, Order, Unsent } from './unsent';
import type { Change, RigDocument } from './wire';

/** My text and theirs change the same lines: the reader chooses, and both stay until then. */
export interface Clash {
    mine: string;
    theirs: string;
}

/** What the page shows of the document. */
export interface DeskView {
    document: RigDocument;
    /** What stands in the editor: the document's text and what was typed since. */
    text: string;
    /** Whether something is not acknowledged by the server yet. */
    unsent: boolean;
    /** Whether the rig is about to be another than the document says: typed, or ordered. */
    changing: boolean;
    /** 'lost': it does not answer, and is tried again. 'key': it is another run and wants its own link. */
    link: 'there' | 'lost' | 'key';
    clash?: Clash;
}

/** A pause in typing after which the text is sent, and the longest that it waits. */
const PAUSE_MS = 200;
const LONGEST_MS = 1000;
const FIRST_RETRY_MS = 500;
const LAST_RETRY_MS = 5000;
const ECHO_MS = 400;

/**
 * The one document, as this page has it. What is typed is in the editor at once and at the server a moment
 * later; everything is sent in order, one thing at a time, and nothing is let go before it is acknowledged.
 */
export class Desk {
    private text: string;
    private readonly orders: Order[] = [];
    private busy = false;
    private due = false;
    private closed = false;
    private link: DeskView['link'] = 'there';
    private clash: Clash | undefined;
    /** What both sides of the clash began with, so that it is one again for a page that is opened later. */
    private clashBase = '';
    /** The text sent last, of which it is not known whether it arrived. */
    private inFlight: string | undefined;
    /** A text that the server will not take: sent again only when it has changed. */
    private refusedText: string | undefined;
    /** What the editor is to hold once the text that stands there has arrived. */
    private next: string | undefined;
    /** The state that was told of while a call was under way. */
    private missed: string | undefined;
    private retryMs = FIRST_RETRY_MS;
    private cancelPause: (() => void) | undefined;
    private cancelLongest: (() => void) | undefined;
    private cancelRetry: (() => void) | undefined;
    private cancelEcho: (() => void) | undefined;

    constructor(
        private document: RigDocument,
        private readonly caller: Caller,
        private readonly timer: Timer,
        private readonly keep: Keep,
        private readonly see: (view: DeskView) => void,
        private readonly tell: (sentence: string) => void,
    ) {
        this.text = document.text;
        if (document.told !== undefined) tell(document.told);
        const left = keep.get(document.rig);
        if (left !== undefined) this.recover(left);
        this.show();
        void this.pump();
    }

    view(): DeskView {
        return {
            document: this.document,
            text: this.text,
            unsent: this.text !== this.document.text || this.orders.length > 0,
            changing:
                this.text !== this.document.text || this.orders.some(({ kind }) => kind !== 'save'),
            link: this.link,
            ...(this.clash === undefined ? {} : { clash: this.clash }),
        };
    }

    /** The editor holds this now. */
    type(text: string): void {
        if (text === this.text) return;
        this.text = text;
        this.next = undefined;
        if (this.clash !== undefined) this.clash = { ...this.clash, mine: text };
        this.show();
        this.cancelPause?.();
        this.cancelPause = this.timer.after(PAUSE_MS, () => {
            this.flush();
        });
        this.cancelLongest ??= this.timer.after(LONGEST_MS, () => {
            this.flush();
        });
    }

    /** Sends what was typed without waiting for a pause. */
    flush(): void {
        this.cancelPause?.();
        this.cancelLongest?.();
        this.cancelPause = this.cancelLongest = undefined;
        this.due = true;
        void this.pump();
    }

    change(changes: Change[], label: string): void {
        this.order({ kind: 'change', changes, label });
    }

    undo(): void {
        this.order({ kind: 'undo' });
    }

    redo(): void {
        this.order({ kind: 'redo' });
    }

    save(): void {
        this.order({ kind: 'save' });
    }

    /** Of the two texts that the server holds. */
    resolve(take: 'mine' | 'disk'): void {
        this.order({ kind: 'resolve', take });
    }

    /** Of the two texts that only this page holds both of. Theirs leaves mine one undo away. */
    settle(take: 'mine' | 'theirs'): void {
        if (this.clash === undefined) return;
        const { mine, theirs } = this.clash;
        this.clash = undefined;
        this.text = mine;
        this.next = take === 'theirs' ? theirs : undefined;
        this.flush();
    }

    /** The document was changed elsewhere: another page, or the file on disk. */
    async elsewhere(revision: string, saved: boolean | undefined): Promise<void> {
        if (this.busy) {
            this.missed = revision;
            return;
        }
        const known = revision === this.document.revision;
        if (known && (saved === undefined || saved === this.document.saved)) {
            // An echo of what was done here, or news that has no other revision: a conflict with the disk.
            this.cancelEcho?.();
            this.cancelEcho = this.timer.after(ECHO_MS, () => void this.again());
            return;
        }
        const before = this.document;
        await this.again();
        const now = this.document;
        if (now.text !== before.text && now.told === undefined) this.tell(CHANGED);
    }

    /** Whether the server answers, and what it holds now; then on with what waits. */
    async again(): Promise<void> {
        if (this.busy || this.closed) return;
        this.cancelRetry?.();
        this.busy = true;
        const reply = await this.caller.call<RigDocument>('/api/document', {
            rig: this.document.rig,
        });
        this.busy = false;
        if (reply.kind === 'done') {
            this.there();
            this.afterLoss(reply.value);
            this.take(reply.value);
        } else {
            this.without(reply);
        }
        this.show();
        if (this.link === 'there') await this.pump();
    }

    /** The page leaves this document; what is unsent is kept for the next that opens it. */
    close(): void {
        this.closed = true;
        this.cancelPause?.();
        this.cancelLongest?.();
        this.cancelRetry?.();
        this.cancelEcho?.();
    }

    private order(order: Order): void {
        this.orders.push(order);
        this.show();
        this.flush();
    }

    private stuck(): boolean {
        return this.clash !== undefined || this.link !== 'there' || this.closed;
    }

    private async pump(): Promise<void> {
        if (this.busy) return;
        this.busy = true;
        while (!this.stuck()) {
            if (this.next !== undefined && this.text === this.document.text) {
                this.text = this.next;
                this.next = undefined;
                this.due = true;
            }
            const unsent = this.text !== this.document.text && this.text !== this.refusedText;
            if (unsent && (this.due || this.orders.length > 0)) {
                await this.sendText();
            } else {
                const order = this.orders[0];
                if (order === undefined) break;
                await this.sendOrder(order);
            }
            this.show();
        }
        this.busy = false;
        if (this.text === this.document.text) this.due = false;
        this.show();
        const missed = this.missed;
        this.missed = undefined;
        if (missed !== undefined && missed !== this.document.revision) await this.again();
    }

    private async sendText(): Promise<void> {
        const sent = this.text;
        const { rig, revision } = this.document;
        this.due = false;
        this.inFlight = sent;
        const reply = await this.caller.call<RigDocument>('/api/text', {
            rig,
            base: revision,
            text: sent,
        });
        if (reply.kind === 'done') {
            this.there();
            this.take(reply.value);
        } else if (reply.kind === 'fault' && reply.fault.document !== undefined) {
            this.inFlight = undefined;
            this.due = true;
            if (this.take(reply.fault.document)) this.tell(MERGED);
        } else if (reply.kind === 'fault' && !LATER.has(reply.fault.fault)) {
            this.inFlight = undefined;
            this.refusedText = sent;
            this.tell(reply.fault.sentence);
        } else {
            this.due = true;
            this.without(reply);
        }
    }

    private async sendOrder(order: Order): Promise<void> {
        const { rig, revision } = this.document;
        if (order.kind === 'change' || order.kind === 'undo' || order.kind === 'redo') {
            order.sentOn = revision;
            this.remember();
        }
        const reply = await this.caller.call<RigDocument>(`/api/${order.kind}`, {
            rig,
            base: revision,
            ...(order.kind === 'change' ? { changes: order.changes, label: order.label } : {}),
            ...(order.kind === 'resolve' ? { take: order.take } : {}),
        });
        if (reply.kind === 'lost' || (reply.kind === 'fault' && LATER.has(reply.fault.fault))) {
            this.without(reply);
            return;
        }
        this.there();
        if (reply.kind === 'done') {
            this.orders.shift();
            this.take(reply.value);
            return;
        }
        const { fault, sentence, document } = reply.fault;
        if (document !== undefined) this.take(document);
        // A save on an older state is a save of what stands now; anything else was meant for what was seen.
        if (fault === 'stale' && order.kind === 'save' && document !== undefined) return;
        this.orders.shift();
        this.tell(sentence);
    }

    /**
     * The server's document is this now. What was typed since the last one is carried over.
     *
     * @returns whether two changes were merged
     */
    private take(document: RigDocument): boolean {
        // What was sent and not acknowledged may have arrived: then mine was made from that.
        const base = this.inFlight === document.text ? document.text : this.document.text;
        const mine = this.text;
        if (document.told !== undefined && document.told !== this.document.told) {
            this.tell(document.told);
        }
        const open = this.clash !== undefined && mine !== document.text;
        this.inFlight = undefined;
        this.document = document;
        const merged = merge(base, mine, document.text);
        if (open || merged.kind === 'clash') {
            if (!open) this.clashBase = base;
            this.clash = { mine, theirs: document.text };
            return false;
        }
        this.clash = undefined;
        this.text = merged.text;
        return mine !== base && document.text !== base && merged.text !== document.text;
    }

    /** Of an order whose reply was lost: whether it was carried out. */
    private afterLoss(now: RigDocument): void {
        const order = this.orders[0];
        if (order === undefined || !('sentOn' in order)) return;
        if (order.sentOn === now.revision) return;
        this.orders.shift();
        const made =
            order.kind === 'change' && now.undo !== undefined && now.undo.includes(order.label);
        if (made) return;
        const what = order.kind === 'change' ? `“${order.label}”` : `The ${order.kind}`;
        this.tell(
            `${what} may or may not have been made when the server stopped: look, and make it again if it is not there.`,
        );
    }

    private recover(left: Unsent): void {
        const merged = merge(left.base, left.text, this.document.text);
        if (merged.kind === 'clash') {
            this.clash = { mine: left.text, theirs: this.document.text };
            this.clashBase = left.base;
            this.text = left.text;
        } else {
            this.text = merged.text;
        }
        this.orders.push(...left.orders);
        this.afterLoss(this.document);
        this.due = true;
        if (this.view().unsent) this.tell(RECOVERED);
    }

    private there(): void {
        this.link = 'there';
        this.retryMs = FIRST_RETRY_MS;
    }

    private without(reply: Exclude<Reply<RigDocument>, { kind: 'done' }>): void {
        if (reply.kind === 'fault' && reply.fault.fault === 'key') {
            this.link = 'key';
            return;
        }
        if (reply.kind === 'fault' && !LATER.has(reply.fault.fault)) {
            this.tell(reply.fault.sentence);
            return;
        }
        this.link = 'lost';
        this.cancelRetry?.();
        this.cancelRetry = this.timer.after(this.retryMs, () => void this.again());
        this.retryMs = Math.min(LAST_RETRY_MS, this.retryMs * 2);
    }

    private remember(): void {
        if (this.view().unsent) {
            this.keep.put({
                rig: this.document.rig,
                base: this.clash === undefined ? this.document.text : this.clashBase,
                text: this.text,
                orders: this.orders,
            });
        } else {
            this.keep.drop(this.document.rig);
        }
    }

    private show(): void {
        if (this.closed) return;
        this.remember();
        this.see(this.view());
    }
}

/** Faults that say nothing about what was sent: it is to be sent again. */
const LATER = new Set(['key', 'too many']);
const CHANGED = 'The file was changed elsewhere; this is how it stands now.';
const MERGED = 'The file was changed elsewhere meanwhile: both changes are in it now.';
const RECOVERED = 'What was not sent when the page closed is back and being sent again.';
