import { tableNamed } from '../../core/trials';
import type { AnswerDocument, Card } from '../../core/wire';
import { Picture } from '../../pictures';
import { useBay } from '../context';
import { Fold } from '../Fold';
import { OnPaper } from './OnPaper';

const TODAY = 'today';

/** The sheet of the day, where a day file lies beside the rig: what may be done today and in which order. */
export function Today({ document, old }: { document: AnswerDocument; old: boolean }) {
    const bay = useBay();
    const { sections } = document.answer;
    const table = tableNamed(sections, TODAY);
    const sheet = sections.find(
        (section): section is Card => section.kind === 'card' && section.id === TODAY,
    );
    if (table === undefined && sheet === undefined) return null;
    const common = {
        fields: document.fields,
        units: bay.taste.units.value,
        fileName: `${document.rig.name ?? 'rig'}-${TODAY}`,
        selected: bay.selected.value,
        stale: old,
        onShow: (part: string) => {
            bay.show(part);
        },
    };
    return (
        <section class="today" aria-labelledby="today">
            <h3 id="today">Today</h3>
            {table !== undefined && <Picture section={table} {...common} />}
            {sheet !== undefined && (
                <>
                    <OnPaper card={TODAY} title={sheet.title} />
                    <Fold title={sheet.title}>
                        {() => (
                            <>
                                <h4>{sheet.title}</h4>
                                <Picture section={sheet} {...common} />
                            </>
                        )}
                    </Fold>
                </>
            )}
        </section>
    );
}
