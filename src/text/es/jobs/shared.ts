/** What several jobs say alike: the titles of all, the truck and the cautions. */
export const shared: Readonly<Record<string, string>> = {
  'First day on the bench': 'Primer día en el banco',
  'Petrol vapour is about. No flame, no smoking, no lamp that is not sealed. Plug every vapour hose that you open.':
    'Hay vapor de gasolina. Ninguna llama, no fumar, ninguna lámpara que no sea sellada. Ponga tapón a toda manguera de vapor que abra.',
  'Sparks only away from open vapour lines. Make the jumper at the unit first. Switch it at the battery end.':
    'Chispas solo lejos de líneas de vapor abiertas. Conecte el puente primero en la unidad. Enciéndalo del lado de la batería.',
  'Key off before the plug is parted or mated.': 'Llave en OFF antes de desconectar o conectar el conector.',
  'Never put 12 V on cavity 3 with the plug mated. That wire ends inside the controller.':
    'Nunca ponga 12 V en la cavidad 3 con el conector conectado. Ese cable termina dentro del módulo de control.',
  'Never more than [22 inHg|74 kPa] on this unit. Never more than [14 inH2O|3.5 kPa] on the canister or the tank.':
    'Nunca más de [22 inHg|74 kPa] en esta unidad. Nunca más de [14 inH2O|3.5 kPa] en el cánister o el tanque.',
  "On a real truck the vehicle's service information, local codes and the shop's licensed technician come first.":
    'En un camión real van primero la información de servicio del vehículo, los códigos locales y el técnico con licencia del taller.',
  'Smoke with inert gas only, never with shop air. Plug the air hose first.':
    'Humo solo con gas inerte, nunca con aire del taller. Primero ponga tapón a la manguera de aire.',
};
