import { benchScreen } from './en/benchScreen.ts';
import { addLanguage } from './translate.ts';

// Adds the sentences of the bench to those of the first screen, for whoever imports this file.
addLanguage('en', benchScreen);
