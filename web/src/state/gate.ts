import { signal } from '@preact/signals';
import type { Entered, Link } from '../core/wire';
import type { Server } from './server';

const KEY = 'liftwright key';
const ENTERED = 'entered';
const WANTED = 'wanted';

/**
 * The way in: the token of the link is good once and buys the key of this run of the server. The key
 * stays in the tab; other tabs of the same address get links of their own when a new run was entered.
 */
export class Gate {
    readonly state = signal<'entering' | 'in' | 'out'>('entering');
    /** Why one is out. */
    readonly sentence = signal('');
    private readonly channel =
        typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('liftwright');

    constructor(
        private readonly server: Server,
        /** A key came, the first or that of another run. */
        private readonly entered: () => void,
    ) {
        this.channel?.addEventListener('message', event => {
            void this.heard(event.data);
        });
    }

    /** With the token of the address, or else with the key that this tab has. */
    async start(place: Location = location): Promise<void> {
        const token = tokenOf(place.hash);
        if (token !== undefined) {
            history.replaceState(null, '', place.pathname);
            await this.enter(token);
            return;
        }
        const key = sessionStorage.getItem(KEY);
        if (key === null) {
            this.out('This page opens by the link that liftwright open prints.');
        } else {
            this.admit(key, false);
        }
    }

    /** A tab that is out asks those that are in for a link of its own. */
    private async heard(said: unknown): Promise<void> {
        if (said === ENTERED && this.state.peek() === 'out') {
            this.channel?.postMessage(WANTED);
        } else if (said === WANTED && this.state.peek() === 'in') {
            const reply = await this.server.call<Link>('/api/link', {});
            if (reply.kind === 'done') this.channel?.postMessage(reply.value.url);
        } else if (typeof said === 'string' && this.state.peek() === 'out') {
            if (tokenOf(said) !== undefined) await this.enter(said);
        }
    }

    /** A link or its token, as somebody pastes it. */
    async enter(linkOrToken: string): Promise<void> {
        const token = tokenOf(linkOrToken) ?? linkOrToken.trim();
        const reply = await this.server.call<Entered>('/api/enter', { token });
        if (reply.kind === 'done') this.admit(reply.value.key, true);
        else if (reply.kind === 'fault') this.out(reply.fault.sentence);
        else this.out('The server does not answer: is liftwright open still running?');
    }

    /** The key is not that of the run that answers now. */
    out(sentence: string): void {
        this.sentence.value = sentence;
        this.state.value = 'out';
    }

    private admit(key: string, first: boolean): void {
        this.server.key = key;
        sessionStorage.setItem(KEY, key);
        this.state.value = 'in';
        if (first) this.channel?.postMessage(ENTERED);
        this.entered();
    }
}

/** `#enter=…`, as the link has it. */
export function tokenOf(text: string): string | undefined {
    const hash = text.slice(text.indexOf('#') + 1);
    if (!text.includes('#')) return undefined;
    return new URLSearchParams(hash).get('enter') ?? undefined;
}
