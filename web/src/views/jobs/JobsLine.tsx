import { goesOn, summary } from '../../core/jobs';
import type { Job, Question } from '../../core/wire';
import { useBay } from '../context';

const AT: Record<Job['kind'], Question> = {
    flights: 'flight',
    pairs: 'failures',
    explain: 'learning',
};

/** Tells from everywhere of the work that goes on; pressed, it leads there. */
export function JobsLine() {
    const bay = useBay();
    const jobs = bay.jobs.list.value;
    const first = jobs.find(job => job.state === 'running') ?? jobs.find(goesOn);
    if (first === undefined) return null;
    const here = first.rig === bay.desk.value?.document.rig;
    return (
        <div class="jobs-line">
            <button
                type="button"
                class="plain small"
                aria-label={`Work that goes on: ${summary(jobs)}. Go to it`}
                onClick={() => {
                    const open = (): void => {
                        bay.guiding.value = false;
                        bay.open.value = AT[first.kind];
                    };
                    if (here) open();
                    else void bay.openRig(first.rig).then(open);
                }}
            >
                <progress max={first.total} value={first.done} aria-hidden="true" />
                <span>
                    {here ? '' : `${first.rig}: `}
                    {summary(jobs)}
                </span>
            </button>
        </div>
    );
}
