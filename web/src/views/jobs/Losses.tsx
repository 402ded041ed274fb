import { Picture } from '../../pictures';
import { useBay } from '../context';
import { Fold } from '../Fold';
import { Begin, JobPanel } from './JobPanel';

/** Of the whole answer, what is more than the question itself tells. */
const MORE = /pair|triple|three/;

/** Losses in twos and threes, which take minutes. */
export function Losses() {
    const bay = useBay();
    return (
        <section class="losses" aria-labelledby="losses">
            <h3 id="losses">Losses in twos and threes</h3>
            <p class="row">
                <Begin wanted={{ kind: 'pairs' }} words="Work out every two and three at once" />
                <span class="quiet">It takes minutes and goes on when this page is closed.</span>
            </p>
            <JobPanel kind="pairs">
                {(document, job) =>
                    document.answer.sections
                        .filter(section => MORE.test(section.id))
                        .map(section => (
                            <Fold key={section.id} title={section.title}>
                                {() => (
                                    <Picture
                                        section={section}
                                        fields={document.fields}
                                        units={bay.taste.units.value}
                                        fileName={`${document.rig.name ?? 'rig'}-${section.id}`}
                                        stale={job.stale !== undefined}
                                        onShow={part => {
                                            bay.show(part);
                                        }}
                                    />
                                )}
                            </Fold>
                        ))
                }
            </JobPanel>
        </section>
    );
}
