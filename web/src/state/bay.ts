import { computed, effect, signal, untracked } from '@preact/signals';
import type { Timer } from '../core/caller';
import { Desk, type DeskView } from '../core/desk';
import type { Change, Folder, Part, Question, RigDocument, Units, Watched } from '../core/wire';
import { Asks } from './asks';
import { ASKED, openFirst } from '../core/verdicts';
import { Cards } from './cards';
import { Comparing } from './comparing';
import { Flights } from './flights';
import { Gate } from './gate';
import { Jobs } from './jobs';
import { StoredKeep } from './keep';
import { Moving } from './moving';
import { Played } from './played';
import { Reading } from './reading';
import { Sensing } from './sensing';
import { Server } from './server';
import { Taste } from './taste';
import { Tests } from './tests';
import { Trial } from './trial';

export const clock: Timer = {
    after(ms, run) {
        const id = setTimeout(run, ms);
        return () => {
            clearTimeout(id);
        };
    },
};

/** Where in the file the reader is to look. A new object asks anew, also for the same place. */
export interface Look {
    from: number;
    to: number;
}

const AGAIN_MS = 1000;
const LATER_MS = 30_000;

/** Everything that the page holds, put together. */
export class Bay {
    readonly server = new Server();
    readonly taste = new Taste();
    readonly gate = new Gate(this.server, () => void this.entered());
    readonly folder = signal<Folder | undefined>(undefined);
    readonly desk = signal<DeskView | undefined>(undefined);
    /** What was merged, recovered, refused: the last sentence, with a count so that it is told again. */
    readonly told = signal<{ sentence: string; count: number }>({ sentence: '', count: 0 });
    readonly selected = signal<string | undefined>(undefined);
    /** What was named when it was selected: perhaps a wire of it, which no drawing of the rig has. */
    readonly named = signal<string | undefined>(undefined);
    /** The failure that is played on the drawn rig, by the name of its line. */
    readonly failure = signal<string | undefined>(undefined);
    readonly look = signal<Look | undefined>(undefined);
    readonly open = signal<Question | undefined>('lift');
    /** Whether the guide for a rig from nothing stands in place of the ladder. */
    readonly guiding = signal(false);
    readonly helping = signal(false);
    readonly searching = signal(false);
    /** The kind of number whose formula, source and test lie open. */
    readonly field = signal<string | undefined>(undefined);
    /** Whether the rig file lies open beside, and whether as outline. */
    readonly facing = signal(true);
    readonly outlined = signal(false);
    readonly asks = new Asks(
        this.server,
        sentence => {
            this.tell(sentence);
        },
        () => void this.kept?.again(),
    );
    readonly trial = new Trial(this.server, () => this.open.peek());
    readonly comparing = new Comparing(this.server, () => this.where());
    readonly sensing = new Sensing(this.server, this.trial, () => this.where());
    readonly cards = new Cards(
        this.server,
        () => this.where(),
        sentence => {
            this.tell(sentence);
        },
        () => {
            this.askAgain();
        },
    );
    readonly tests = new Tests(
        this.server,
        () => this.where(),
        list => {
            this.asks.learn('learning', list);
        },
    );
    readonly jobs = new Jobs(
        this.server,
        () => this.where(),
        sentence => {
            this.tell(sentence);
        },
    );
    readonly played = new Played(this.server, () => this.where());
    readonly flights = new Flights(this.server, () => {
        this.askSome(question => question === 'flight');
    });
    readonly reading = new Reading(
        this.server,
        () => this.where(),
        () => {
            this.askAgain();
        },
    );
    readonly moving = new Moving(
        this.server,
        this.trial,
        () => this.where(),
        (moved, label) => {
            this.change(moved.changes, label);
        },
        sentence => {
            this.tell(sentence);
        },
    );
    /** The document's state, apart from what is typed: what questions are asked of. */
    private readonly asked = computed(() => {
        const document = this.desk.value?.document;
        return document === undefined
            ? undefined
            : `${document.rig}\n${document.revision}\n${this.taste.units.value}`;
    });
    private kept: Desk | undefined;
    private watching: AbortController | undefined;

    start(): void {
        effect(() => {
            if (this.asked.value === undefined) return;
            untracked(() => {
                this.askAgain();
            });
        });
        effect(() => {
            if (this.open.value !== 'flight') return;
            untracked(() => {
                const { state } = this.asks.rungs.peek().flight;
                if (state === 'unasked' || state === 'stale') {
                    this.askSome(question => question === 'flight');
                }
            });
        });
        effect(() => {
            if (this.desk.value?.link === 'key') {
                this.gate.out(
                    'liftwright open was started again. Open the link it prints now, or paste it here; what you typed stays.',
                );
            }
        });
        // Who comes back to the page has perhaps been in another program, or the machine was asleep.
        addEventListener('focus', () => void this.kept?.again());
        void this.gate.start();
    }

    tell(sentence: string): void {
        this.told.value = { sentence, count: this.told.value.count + 1 };
    }

    /** What calls speak of, once what was typed has arrived. */
    where(): { rig: string; revision: string; units: Units } | undefined {
        const document = this.desk.peek()?.document;
        return document === undefined
            ? undefined
            : {
                  rig: document.rig,
                  revision: document.revision,
                  units: this.taste.units.peek(),
              };
    }

    private async entered(): Promise<void> {
        if (this.kept !== undefined) {
            // Another run of the server: what is unsent goes to it.
            await this.kept.again();
            this.watch();
            return;
        }
        const reply = await this.server.call<Folder>('/api/folder', {});
        if (reply.kind === 'fault' && reply.fault.fault === 'key') {
            this.gate.out(
                'This link was for another run. Open the one that liftwright open prints now.',
            );
            return;
        }
        if (reply.kind !== 'done') {
            this.gate.out('The server does not answer: is liftwright open still running?');
            return;
        }
        this.folder.value = reply.value;
        const first = reply.value.open ?? reply.value.rigs[0]?.path;
        if (first === undefined) this.guiding.value = true;
        else await this.openRig(first);
    }

    /** What can be opened now. */
    async list(): Promise<void> {
        const reply = await this.server.call<Folder>('/api/folder', {});
        if (reply.kind === 'done') this.folder.value = reply.value;
    }

    async openRig(rig: string): Promise<void> {
        const reply = await this.server.call<RigDocument>('/api/document', { rig });
        if (reply.kind === 'done') this.lay(reply.value);
        else this.tell(reply.kind === 'fault' ? reply.fault.sentence : NO_ANSWER);
    }

    /** Lays a document on the desk in place of what was there. */
    lay(document: RigDocument): void {
        this.kept?.flush();
        this.kept?.close();
        this.trial.let();
        this.asks.forget();
        this.cards.forget();
        this.tests.forget();
        this.played.close();
        void this.jobs.look();
        this.comparing.forget();
        this.sensing.forget();
        void this.flights.list(document.rig);
        void this.reading.drop();
        this.selected.value = undefined;
        this.named.value = undefined;
        this.failure.value = undefined;
        this.guiding.value = false;
        const before = this.asked.peek();
        this.kept = new Desk(
            document,
            this.server,
            clock,
            new StoredKeep(storage()),
            view => {
                this.desk.value = view;
            },
            sentence => {
                this.tell(sentence);
            },
        );
        this.desk.value = this.kept.view();
        // The same rig opened anew: nothing that it is asked of has changed, and nothing is answered.
        if (before === this.asked.peek()) this.askAgain();
        this.watch();
    }

    type(text: string): void {
        this.kept?.type(text);
    }

    change(changes: Change[], label: string): void {
        this.kept?.change(changes, label);
    }

    undo(): void {
        this.kept?.undo();
    }

    redo(): void {
        this.kept?.redo();
    }

    save(): void {
        this.kept?.save();
    }

    resolve(take: 'mine' | 'disk'): void {
        this.kept?.resolve(take);
    }

    settle(take: 'mine' | 'theirs'): void {
        this.kept?.settle(take);
    }

    /** What is known of this state of the rig is told at once, unless everything is wanted anew. */
    askAgain(anew = false): void {
        const document = this.desk.peek()?.document;
        if (document === undefined) return;
        this.asks.changed();
        const tried = this.trial.tried.peek();
        if (tried !== undefined && tried.of !== document.revision) this.trial.let();
        this.cards.changed(document.readable);
        if (document.readable) {
            this.askSome(question => question !== 'flight' || this.open.peek() === 'flight', anew);
        }
    }

    /** Those wanted, and what is not answered yet; flying takes minutes, and begins when somebody looks. */
    private askSome(wanted: (question: Question) => boolean, anew = false): void {
        const document = this.desk.peek()?.document;
        if (document?.readable !== true) return;
        const rungs = this.asks.rungs.peek();
        void this.asks.ask(
            document.rig,
            document.revision,
            this.taste.units.peek(),
            openFirst(
                this.open.peek(),
                ASKED.filter(
                    question =>
                        wanted(question) ||
                        (question !== 'flight' && rungs[question].state !== 'fresh'),
                ),
            ),
            this.flights.chosen.peek(),
            anew,
        );
    }

    stop(): void {
        const document = this.desk.peek()?.document;
        if (document !== undefined) this.asks.stop(document.revision);
        this.cards.stop();
        this.tests.stop();
    }

    tryOut(label: string, changes: Change[]): void {
        const where = this.where();
        if (where === undefined) return;
        void this.trial.start(where.rig, where.revision, where.units, label, changes);
    }

    /** Makes what was tried; undo takes it back. */
    keepTrial(): void {
        const tried = this.trial.tried.peek();
        if (tried === undefined) return;
        this.trial.let();
        this.change(tried.changes, tried.label);
        this.tell(`Kept: ${tried.label}. Undo takes it back; save writes it to the file.`);
    }

    /** A part or a path of the file: selected in the pictures, looked at in the file. */
    show(part: string | undefined, path?: string): void {
        const document = this.desk.peek()?.document;
        if (document === undefined) return;
        const found = partNamed(document.parts, part);
        if (part !== undefined) {
            this.selected.value = found?.id ?? part;
            this.named.value = part;
        }
        const at = (path === undefined ? undefined : spanOf(document, path)) ?? found;
        if (at !== undefined) this.look.value = { from: at.from, to: at.to };
    }

    private watch(): void {
        this.watching?.abort();
        const rig = this.desk.peek()?.document.rig;
        if (rig === undefined) return;
        const watching = new AbortController();
        this.watching = watching;
        void this.server
            .stream('/api/watch', { rig }, watching.signal, line => {
                const { revision, saved, jobs } = line as Watched;
                if (jobs !== undefined) this.jobs.heard(jobs);
                if (revision !== undefined) void this.kept?.elsewhere(revision, saved);
            })
            .then(end => {
                if (watching.signal.aborted) return;
                // Too many tabs: this one is not told of changes elsewhere, and meets them when it edits.
                const pause =
                    end.kind === 'fault' && end.fault.fault !== 'key' ? LATER_MS : AGAIN_MS;
                clock.after(pause, () => {
                    if (watching.signal.aborted) return;
                    void this.kept?.again().then(() => {
                        if (this.desk.peek()?.link !== 'key' && !watching.signal.aborted) {
                            this.watch();
                        }
                    });
                });
            });
    }
}

const NO_ANSWER = 'The server does not answer: is liftwright open still running?';

function storage(): Storage | undefined {
    try {
        return localStorage;
    } catch {
        return undefined;
    }
}

/** A finding may name a place in the wiring of a part: then the part it begins with is meant. */
export function partNamed(parts: Part[], name: string | undefined): Part | undefined {
    if (name === undefined) return undefined;
    const exact = parts.find(part => part.id === name);
    if (exact !== undefined) return exact;
    const within = parts.filter(part => `.${name}.`.includes(`.${part.id}.`));
    return within.sort((a, b) => b.id.length - a.id.length)[0];
}

/** The span of the longest beginning of a path that the outline has. */
export function spanOf(document: RigDocument, path: string): Look | undefined {
    let nodes = document.outline;
    let found: Look | undefined;
    for (;;) {
        const next = nodes.find(node => node.path === path || path.startsWith(`${node.path}/`));
        if (next === undefined) return found;
        found = { from: next.from, to: next.to };
        nodes = next.children;
    }
}
