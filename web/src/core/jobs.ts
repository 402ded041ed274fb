import type { Job } from './wire';

/** What is to be done of what takes minutes. */
export type Wanted =
    | { kind: 'flights'; profile?: string; flights: number; seed: string }
    | { kind: 'pairs' }
    | { kind: 'explain'; test: string };

/** Whether work goes on, or will by itself. */
export function goesOn(job: Job): boolean {
    return job.state === 'running' || job.state === 'waiting';
}

/** Those of one rig and one kind, the newest first. */
export function jobsOf(jobs: readonly Job[], rig: string, kind: Job['kind']): Job[] {
    return jobs.filter(job => job.rig === rig && job.kind === kind);
}

export function stateWords(job: Job): string {
    switch (job.state) {
        case 'running':
            return job.stage === '' ? 'beginning' : `${job.stage}: ${job.far}`;
        case 'waiting':
            return 'waits for its turn';
        case 'stopped':
            return job.done > 0 && job.total > 1 ? `stopped at ${job.far}` : 'stopped';
        case 'done':
            return 'done';
        case 'failed':
            return 'cannot be done';
    }
}

/** All that goes on, in one line for every place of the page. */
export function summary(jobs: readonly Job[]): string {
    const going = jobs.filter(goesOn);
    const first = going.find(job => job.state === 'running') ?? going[0];
    if (first === undefined) return '';
    const more = going.length - 1;
    return `${first.title}: ${stateWords(first)}${more > 0 ? `; ${more} more ${more === 1 ? 'waits' : 'wait'}` : ''}`;
}

/** What is worth a sentence between one list and the next: that something ended. */
export function endings(before: readonly Job[], now: readonly Job[]): string[] {
    return now.flatMap(job => {
        const old = before.find(each => each.job === job.job);
        if (old === undefined || !goesOn(old) || goesOn(job)) return [];
        const words = { done: 'done', stopped: 'stopped', failed: 'cannot be done' };
        const state = job.state as keyof typeof words;
        return [`${job.title}: ${words[state]}.${job.told === '' ? '' : ` ${job.told}`}`];
    });
}

/** What changes where there is more to be read of a job than before. */
export function markOf(job: Job): string {
    return `${job.job} ${job.state} ${job.done} ${job.total}`;
}
