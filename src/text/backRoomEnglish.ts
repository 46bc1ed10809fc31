import { backRoomScreen } from './en/backRoomScreen.ts';
import { addLanguage } from './translate.ts';

// Adds the sentences of the back room, for whoever imports this file.
addLanguage('en', backRoomScreen);
