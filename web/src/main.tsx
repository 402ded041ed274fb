import './look/tokens.css';
import './look/page.css';
import './look/trials.css';
import './look/learning.css';
import './look/jobs.css';
import { render } from 'preact';
import { Bay } from './state/bay';
import { Page } from './views/Page';

const root = document.getElementById('bay');
if (root) {
    const bay = new Bay();
    render(<Page bay={bay} />, root);
    bay.start();
}
