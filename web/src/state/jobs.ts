import { signal } from '@preact/signals';
import { endings, markOf, type Wanted } from '../core/jobs';
import type { AnswerDocument, Begun, Job } from '../core/wire';
import type { Where } from './cards';
import type { Server } from './server';

/** What has come of a job, and of which state of it. */
export interface Read {
    mark: string;
    units: string;
    document?: AnswerDocument;
    refused?: string;
}

/** Work that takes minutes: the server does it, this page begins, watches and stops it. */
export class Jobs {
    readonly list = signal<readonly Job[]>([]);
    readonly read = signal<ReadonlyMap<number, Read>>(new Map());
    private readonly reading = new Set<number>();

    constructor(
        private readonly server: Server,
        private readonly where: () => Where | undefined,
        private readonly tell: (sentence: string) => void,
    ) {}

    /** How all of them stand now. */
    heard(jobs: readonly Job[]): void {
        const ended = endings(this.list.peek(), jobs);
        this.list.value = jobs;
        if (ended.length > 0) this.tell(ended.join(' '));
    }

    async look(): Promise<void> {
        const reply = await this.server.call<{ jobs: Job[] }>('/api/jobs', {});
        if (reply.kind === 'done') this.heard(reply.value.jobs);
    }

    async begin(wanted: Wanted): Promise<void> {
        const where = this.where();
        if (where === undefined) return;
        const { rig, revision } = where;
        await this.change('/api/jobbegin', { rig, base: revision, ...wanted });
    }

    async stop(job: number): Promise<void> {
        await this.change('/api/jobstop', { job });
    }

    async resume(job: number): Promise<void> {
        await this.change('/api/jobresume', { job });
    }

    async forget(job: number): Promise<void> {
        const reply = await this.server.call<{ jobs: Job[] }>('/api/jobforget', { job });
        if (reply.kind === 'done') this.heard(reply.value.jobs);
        else this.failed(reply);
    }

    private async change(path: string, body: unknown): Promise<void> {
        const reply = await this.server.call<Begun>(path, body);
        if (reply.kind !== 'done') {
            this.failed(reply);
            return;
        }
        const { job } = reply.value;
        const others = this.list.peek().filter(each => each.job !== job.job);
        this.heard([job, ...others].sort((a, b) => b.job - a.job));
    }

    private failed(reply: { kind: 'fault'; fault: { sentence: string } } | { kind: 'lost' }): void {
        this.tell(reply.kind === 'fault' ? reply.fault.sentence : 'The server does not answer.');
    }

    /** What has come of it by now, where that is more than was read. */
    async open(job: Job): Promise<void> {
        const units = this.where()?.units ?? 'si';
        const mark = markOf(job);
        const there = this.read.peek().get(job.job);
        if (this.reading.has(job.job) || (there?.mark === mark && there.units === units)) return;
        // Before anything is kept there is nothing to be read, and the server would only say so.
        if (job.kind === 'flights' ? job.done === 0 : job.state !== 'done') return;
        this.reading.add(job.job);
        try {
            const body = { job: job.job, units };
            const reply = await this.server.call<AnswerDocument>('/api/jobanswer', body);
            if (reply.kind === 'lost') return;
            const next = new Map(this.read.peek());
            next.set(
                job.job,
                reply.kind === 'done'
                    ? { mark, units, document: reply.value }
                    : { mark, units, refused: reply.fault.sentence },
            );
            this.read.value = next;
        } finally {
            this.reading.delete(job.job);
        }
    }
}
