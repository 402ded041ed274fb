import { signal } from '@preact/signals';
import type { AboutTest, Kept, LogProblem, LogRead, ReadingTold, Uploaded } from '../core/wire';
import type { Where } from './cards';
import type { Server } from './server';
import { nextTurn } from './turn';

/** How far a log has come on its way into the logbook. */
export type Way =
    | { at: 'nothing' }
    /** Bytes. */
    | { at: 'sending'; name: string; sent: number; total: number }
    | { at: 'reading' }
    | { at: 'understood'; read: LogRead; keeping: boolean; sentence: string }
    | { at: 'refused'; sentence: string; problems: readonly LogProblem[] }
    | { at: 'kept'; sentence: string };

/** One piece of a log, bytes: what a route takes, and what the page can pack without a pause. */
const PIECE = 1 << 20;

const NO_ANSWER = 'The server does not answer: is liftwright open still running?';

/** Reading in a log: sent piece by piece, understood, looked at, kept or let go. */
export class Reading {
    readonly way = signal<Way>({ at: 'nothing' });
    private running: AbortController | undefined;
    private uploads: string[] = [];

    constructor(
        private readonly server: Server,
        private readonly where: () => Where | undefined,
        /** A test stands in the logbook that did not before. */
        private readonly kept: () => void,
        private readonly pack: (piece: Blob) => Promise<string> = base64,
    ) {}

    /** Takes the files of one test. */
    async take(files: readonly File[]): Promise<void> {
        const where = this.where();
        if (where === undefined || files.length === 0) return;
        await this.drop();
        const running = new AbortController();
        this.running = running;
        const fault = await this.send(where.rig, files, running.signal);
        if (this.running !== running) return;
        if (fault !== undefined) {
            this.running = undefined;
            this.way.value = { at: 'refused', sentence: fault, problems: [] };
            return;
        }
        await this.understand(running);
    }

    private async send(
        rig: string,
        files: readonly File[],
        stopped: AbortSignal,
    ): Promise<string | undefined> {
        const total = files.reduce((sum, file) => sum + file.size, 0);
        let sent = 0;
        for (const file of files) {
            let upload: string | undefined;
            let at = 0;
            do {
                if (isStopped(stopped)) return undefined;
                this.way.value = { at: 'sending', name: file.name, sent, total };
                const piece = file.slice(at, at + PIECE);
                const bytes = await this.pack(piece);
                const known = upload === undefined ? {} : { upload };
                const body = { rig, name: file.name, at, bytes, ...known };
                const reply = await this.server.call<Uploaded>('/api/upload', body);
                if (reply.kind !== 'done') {
                    return reply.kind === 'fault' ? reply.fault.sentence : NO_ANSWER;
                }
                if (isStopped(stopped)) {
                    await this.server.call('/api/forget', { uploads: [reply.value.upload] });
                    return undefined;
                }
                if (upload === undefined) this.uploads.push(reply.value.upload);
                upload = reply.value.upload;
                at += piece.size;
                sent += piece.size;
            } while (at < file.size);
        }
        return undefined;
    }

    private async understand(running: AbortController): Promise<void> {
        const where = this.where();
        if (where === undefined) return;
        this.way.value = { at: 'reading' };
        const { rig, revision } = where;
        const end = await this.server.stream(
            '/api/reading',
            { rig, base: revision, uploads: this.uploads, turn: nextTurn() },
            running.signal,
            line => {
                if (this.running === running) this.told(line as ReadingTold);
            },
        );
        if (this.running !== running) return;
        this.running = undefined;
        if (!this.isReading()) return;
        const sentence = end.kind === 'fault' ? end.fault.sentence : NO_ANSWER;
        this.way.value = { at: 'refused', sentence, problems: [] };
    }

    private isReading(): boolean {
        return this.way.value.at === 'reading';
    }

    private told(line: ReadingTold): void {
        if ('read' in line) {
            this.way.value = { at: 'understood', read: line.read, keeping: false, sentence: '' };
        } else if ('problems' in line) {
            const sentence = 'Nothing was read in: the files do not say all that is needed.';
            this.way.value = { at: 'refused', sentence, problems: line.problems };
        } else if ('refused' in line) {
            this.way.value = { at: 'refused', sentence: line.refused, problems: [] };
        }
    }

    /** Writes it into the logbook. */
    async keep(about: AboutTest): Promise<void> {
        const where = this.where();
        const now = this.way.value;
        if (where === undefined || now.at !== 'understood' || now.keeping) return;
        this.way.value = { ...now, keeping: true, sentence: '' };
        const { rig, revision } = where;
        const reply = await this.server.call<Kept>('/api/keep', {
            rig,
            base: revision,
            reading: now.read.reading,
            ...about,
        });
        if (reply.kind === 'done') {
            this.way.value = { at: 'kept', sentence: reply.value.sentence };
            void this.forget();
            this.kept();
            return;
        }
        const sentence = reply.kind === 'fault' ? reply.fault.sentence : NO_ANSWER;
        this.way.value = { ...now, keeping: false, sentence };
    }

    /** Lets it go: nothing of it stays on the server. */
    async drop(): Promise<void> {
        this.running?.abort();
        this.running = undefined;
        this.way.value = { at: 'nothing' };
        await this.forget();
    }

    private async forget(): Promise<void> {
        const { uploads } = this;
        this.uploads = [];
        if (uploads.length > 0) await this.server.call('/api/forget', { uploads });
    }
}

function isStopped(signal: AbortSignal): boolean {
    return signal.aborted;
}

/** Packed by the browser, beside what the page does. */
function base64(piece: Blob): Promise<string> {
    return new Promise((resolve, reject) => {
        const reader = new FileReader();
        reader.onload = () => {
            const url = typeof reader.result === 'string' ? reader.result : '';
            resolve(url.slice(url.indexOf(',') + 1));
        };
        reader.onerror = () => {
            reject(reader.error ?? new Error('the file cannot be read'));
        };
        reader.readAsDataURL(piece);
    });
}
