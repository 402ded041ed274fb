import { useEffect, useRef } from 'preact/hooks';
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
    const tools = useRef<HTMLParagraphElement>(null);
    const pressed = useRef(false);
    useEffect(() => {
        // The button that was pressed has gone: the one in its place takes the focus.
        const lost = document.activeElement === null || document.activeElement === document.body;
        if (pressed.current && lost) {
            pressed.current = false;
            tools.current?.querySelector<HTMLElement>('[data-way]')?.focus();
        }
    }, [going]);
    const press = (what: Promise<void>): void => {
        pressed.current = true;
        void what;
    };
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
            <p class="row job-tools" ref={tools}>
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
                        data-way="stop"
                        aria-label={`Stop ${job.title}`}
                        onClick={() => {
                            press(jobs.stop(job.job));
                        }}
                    >
                        Stop
                    </button>
                )}
                {(job.state === 'stopped' || job.state === 'failed') && job.stale === undefined && (
                    <button
                        type="button"
                        class="plain small"
                        data-way="go on"
                        aria-label={`Go on with ${job.title}`}
                        onClick={() => {
                            press(jobs.resume(job.job));
                        }}
                    >
                        Go on
                    </button>
                )}
                {!going && (
                    <button
                        type="button"
                        class="plain small"
                        aria-label={`Let go of ${job.title}`}
                        onClick={() => {
                            void jobs.forget(job.job).then(() => {
                                document.getElementById('sheet')?.focus({ preventScroll: true });
                            });
                        }}
                    >
                        Let go
                    </button>
                )}
            </p>
        </li>
    );
}
