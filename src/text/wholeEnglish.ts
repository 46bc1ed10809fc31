import { catalogue } from './en/catalogue.ts';
import { addLanguage } from './translate.ts';

// Adds every sentence to those of the first screen, for whoever imports this file.
addLanguage('en', catalogue);
