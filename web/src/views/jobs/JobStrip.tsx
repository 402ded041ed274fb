import { goesOn, stateWords } from '../../core/jobs';
import type { Job } from '../../core/wire';
import { useBay } from '../context';

interface JobStripProps {
    job: Job;
    /** Whether what came of it lies open below, where it can. */
    open?: boolean | undefined;
    onOpen?: (() => void) | undefined;
}

/** One piece of work that takes minutes: how far it is, and what can be done about it. */
export function JobStrip({ job, open, onOpen }: JobStripProps) {
    const { jobs } = useBay();
    const going = goesOn(job);
    return (
        <li class={`job ${job.state}`} data-job={job.job}>
            <p class="job-line">
                <strong>{job.title}</strong>
                <span class="job-state">{stateWords(job)}</span>
            </p>
            {going && (
                <progress max={job.total} value={job.done} aria-label={`${job.title}: done`} />
            )}
            {job.told !== '' && <p class="quiet">{job.told}</p>}
            {job.stale !== undefined && <p class="job-stale">{job.stale}</p>}
            <p class="row job-tools">
                {onOpen !== undefined && (
                    <button
                        type="button"
                        class="plain small"
                        aria-expanded={open === true}
                        aria-label={`${open === true ? 'Close' : 'Read'} ${job.title}`}
                        onClick={onOpen}
                    >
                        {open === true ? 'Close' : 'Read'}
                    </button>
                )}
                {going && (
                    <button
                        type="button"
                        class="plain small"
                        aria-label={`Stop ${job.title}`}
                        onClick={() => void jobs.stop(job.job)}
                    >
                        Stop
                    </button>
                )}
                {(job.state === 'stopped' || job.state === 'failed') && job.stale === undefined && (
                    <button
                        type="button"
                        class="plain small"
                        aria-label={`Go on with ${job.title}`}
                        onClick={() => void jobs.resume(job.job)}
                    >
                        Go on
                    </button>
                )}
                {!going && (
                    <button
                        type="button"
                        class="plain small"
                        aria-label={`Let go of ${job.title}`}
                        onClick={() => void jobs.forget(job.job)}
                    >
                        Let go
                    </button>
                )}
            </p>
        </li>
    );
}
