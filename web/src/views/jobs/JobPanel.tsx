import { useEffect, useState } from 'preact/hooks';
import type { ComponentChildren } from 'preact';
import { jobsOf, markOf, type Wanted } from '../../core/jobs';
import type { AnswerDocument, Job } from '../../core/wire';
import { useBay } from '../context';
import { JobStrip } from './JobStrip';

interface JobPanelProps {
    kind: Job['kind'];
    /** Of these alone; all of the kind where it is left out. */
    only?: ((job: Job) => boolean) | undefined;
    children: (document: AnswerDocument, job: Job) => ComponentChildren;
}

/** The jobs of one kind of the open rig, and what came of the one that is read. */
export function JobPanel({ kind, only, children }: JobPanelProps) {
    const bay = useBay();
    const rig = bay.desk.value?.document.rig ?? '';
    const all = jobsOf(bay.jobs.list.value, rig, kind).filter(only ?? (() => true));
    const [open, setOpen] = useState<number | 'newest' | undefined>('newest');
    const shown = open === 'newest' ? all[0] : all.find(job => job.job === open);
    const read = shown === undefined ? undefined : bay.jobs.read.value.get(shown.job);
    const { units } = bay.taste;
    const mark = shown === undefined ? '' : markOf(shown);
    useEffect(() => {
        if (shown !== undefined) void bay.jobs.open(shown);
    }, [bay, mark, read, units.value]);
    if (all.length === 0) return null;
    return (
        <>
            <ul class="jobs">
                {all.map(job => (
                    <JobStrip
                        key={job.job}
                        job={job}
                        open={job === shown}
                        onOpen={() => {
                            setOpen(job === shown ? undefined : job.job);
                        }}
                    />
                ))}
            </ul>
            {shown !== undefined && read?.refused !== undefined && (
                <p class="quiet">{read.refused}</p>
            )}
            {shown !== undefined && read?.document !== undefined && (
                <div class={shown.stale === undefined ? 'job-answer' : 'job-answer old'}>
                    {children(read.document, shown)}
                </div>
            )}
        </>
    );
}

/** Begins what takes minutes. */
export function Begin({ wanted, words }: { wanted: Wanted; words: string }) {
    const bay = useBay();
    return (
        <button type="button" onClick={() => void bay.jobs.begin(wanted)}>
            {words}
        </button>
    );
}
