import { render } from 'preact';
import '../src/look/tokens.css';
import '../src/look/page.css';
import { Picture } from '../src/pictures';
import bare from './balance.json';
import { withTexts } from '../test/pictures/texts';
import { heatDocument } from '../test/pictures/heat';
const theme = new URLSearchParams(location.search).get('theme');
if (theme) document.documentElement.dataset.theme = theme;
const doc = withTexts(bare as any);
const rig = doc.sections.find(s => s.kind === 'drawing') as any;
const heat = heatDocument(rig);
function App() {
    return <div class="pictures heat">{heat.sections.map(s => <Picture key={s.id} section={s} rig={rig} fields={{...doc.fields, ...heat.fields}} units="si" fileName="f" selected="left.feed" onShow={p => console.log('show', p)} />)}</div>;
}
render(<App />, document.getElementById('home')!);
