/** Lo que puede estar mal en un archivo de escenario. Va detrás de su lugar, por eso empieza con minúscula. */
export const scenarioProblems = {
  scenarioProblems: {
    'too-large': 'el archivo tiene {{bytes}} KiB. Se permiten {{limit}} KiB a lo más: acórtelo.',
    'not-text': 'esto no es texto en UTF-8. Guarde el archivo como texto simple, en UTF-8.',
    'yaml-syntax':
      'esto no es YAML ({{detail}}). Revise las comillas, los dos puntos y las sangrías aquí y en la línea de arriba.',
    'nested-too-deep': 'esto está anidado demasiado hondo. Un escenario necesita seis niveles como máximo.',
    'brackets-closed':
      'aquí se cierran corchetes que nunca se abrieron. Quítelos, o ponga el texto entre comillas.',
    'several-documents':
      'aquí empieza un segundo documento. Deje un solo escenario en el archivo; quite la línea "---".',
    'alias-not-allowed':
      'no se admiten anclas (&) ni alias (*). Escriba el texto completo, o póngalo entre comillas si empieza con & o *.',
    'tag-not-allowed':
      'no se admiten etiquetas con signo de exclamación. Quítela, o ponga el texto entre comillas si empieza con ese signo.',
    'directive-not-allowed':
      'no se admiten líneas que empiezan con %. Quítela, o ponga el texto entre comillas.',
    'key-not-a-word':
      'una clave debe ser una sola palabra antes de los dos puntos. Escríbala, o ponga esto entre comillas si era texto.',
    'hidden-character':
      'aquí hay un carácter que no se ve ({{character}}). Bórrelo, o vuelva a teclear el texto.',
    'unreadable-character':
      'aquí se perdió un carácter (U+FFFD). Vuelva a teclearlo, y guarde el archivo en UTF-8.',
    'format-missing': 'el archivo no dice su formato. Agregue "format: {{newest}}".',
    'format-newer':
      'este archivo es del formato {{found}}, y esta versión del programa lee hasta el formato {{newest}}. Use una versión que lea el formato {{found}}.',
    'format-unknown':
      'no existe ese formato. Escriba un número de {{oldest}} a {{newest}}; un archivo nuevo lleva "format: {{newest}}".',
    'duplicate-key': 'la clave "{{key}}" aparece dos veces. Quite una de las dos.',
    'not-a-map': 'esto no es un escenario. Empiece con "format: 1" y las demás claves, una por línea.',
    'unknown-key': 'aquí no hay ninguna clave "{{key}}". Revise cómo está escrita, o quítela.',
    'missing-key': 'falta la clave "{{key}}". Agréguela.',
    'wrong-type': 'hay {{found}}, pero aquí va {{expected}}. {{remedy}}',
    'not-finite': '{{found}} no es un número con el que se pueda trabajar. Escriba un número sencillo.',
    'number-not-plain':
      'cada programa lee {{found}} a su manera. Escriba un número decimal sencillo, sin cero delante.',
    'not-one-of': '"{{found}}" no es ninguna de las palabras de este lugar. Use una de estas: {{allowed}}.',
    'number-too-small': '{{found}} es muy poco. Use {{least}} o más.',
    'number-too-large': '{{found}} es demasiado. Use {{most}} o menos.',
    'not-a-whole-number': '{{found}} no es un número entero. Redondéelo.',
    'text-too-long': 'este texto es demasiado largo. Déjelo en {{most}} caracteres.',
    'text-empty': 'este texto está vacío. Escríbalo.',
    'bad-form': '"{{found}}" no está escrito como se pide aquí. Use {{form}}.',
    'list-too-short': 'esta lista necesita {{least}} o más. Agréguele algo.',
    'list-too-long': 'esta lista es demasiado larga. Déjela en {{most}}.',
    'empty-condition':
      'esta condición está vacía, así que siempre se cumpliría. Diga qué muestra que el paso está hecho.',
    'unknown-fault': 'no existe la falla "{{fault}}". Las más parecidas son: {{known}}.',
    'duplicate-fault': 'la falla "{{fault}}" está dos veces en la lista. Quite una de las dos.',
    'severity-missing':
      'la falla "{{fault}}" puede ser leve o grave. Agregue "severity:" de 0 (la más leve) a 1 (la peor).',
    'severity-not-used': 'la falla "{{fault}}" está o no está; no tiene grados. Quite "severity:".',
    'fault-not-at-start':
      'la falla "{{fault}}" es un daño que solo puede hacer una mano en el banco. Elija una que pueda existir cuando empieza el trabajo.',
    'fault-of-other-rig':
      'el equipo "{{rig}}" no tiene la falla "{{fault}}". Use otra, como {{known}}; o cambie "rig:".',
    'step-of-other-rig':
      'el equipo "{{rig}}" no tiene "{{name}}". Nombre un lugar, una cosa o un componente que tenga, o cambie "rig:".',
    'variants-not-allowed':
      'los pasos de un trabajo en modo "{{mode}}" hablan de un solo camión, así que no lleva variantes ni rangos. Quite esto, o cambie el modo.',
    'range-not-upwards':
      'la gravedad va de {{from}} a {{to}}, y eso no sube. Haga que "severity-to:" sea el mayor de los dos, o quítelo.',
    'when-moved-not-allowed':
      'la falla "{{fault}}" no va y viene con el arnés. Quite "when-moved:", o use una de estas: {{allowed}}.',
    'root-not-listed': 'la causa "{{root}}" no está en la lista de fallas. Agréguele "- fault: {{root}}".',
    'not-a-root': '"{{root}}" no es una causa raíz. Use una de estas: {{allowed}}, o quite "root:".',
    'faults-in-introduction':
      'una introducción no pide veredicto, así que su camión debe estar sano. Escriba "{{list}}: []", o cambie el modo.',
    'steps-missing':
      'un trabajo en modo "{{mode}}" necesita sus pasos. Agregue "walkthrough:" con una lista de pasos, o cambie el modo.',
    'steps-not-allowed':
      'un trabajo en modo "{{mode}}" no lleva pasos. Quite "walkthrough:", o ponga el modo walkthrough o introduction.',
    'duplicate-step': 'dos pasos tienen el id "{{id}}". Póngale otro a uno de ellos.',
    'not-in-introduction':
      'una introducción no tiene veredicto ni calificación, así que en ella no va "{{key}}". Quítelo, o cambie el modo.',
    'weights-sum': 'estos pesos suman {{sum}}, y deben sumar {{all}}. Dele {{off}} {{way}} a uno de ellos.',
    'limits-empty':
      'estos límites no limitan nada. Agregue "minutes:", "dollars:" o ambos, o quite "limits:".',
    'rule-on-and-off': 'la regla "{{rule}}" está activada y desactivada a la vez. Quite una de las dos.',
    'tool-twice': 'la herramienta "{{tool}}" está dos veces en la lista. Quite una de las dos.',
    'rule-needs-tool':
      'la regla "{{rule}}" no se puede cumplir con las herramientas de este trabajo. Agregue a "tools:": {{tools}}; o quite la regla.',
    'step-needs-tool':
      '"{{key}}" nunca se puede cumplir con las herramientas de este trabajo. Agregue a "tools:": {{tools}}; o pida otra cosa en el paso.',
    'part-of-other-rig': 'el equipo "{{rig}}" no tiene "{{item}}". Quítelo, o elija otro equipo.',
    'renewed-twice':
      'la refacción "{{item}}" está dos veces. Anótela una vez, y diga en el historial cuántas veces se renovó.',
    'no-language': 'este texto no está en ningún idioma. Agregue "en:" o "es:", o escríbalo sin idioma.',
    'translated-twice':
      'la misma oración está traducida de otra manera más arriba. Dé a las dos las mismas palabras.',
    'seed-not-by-seat':
      'los pasos de un trabajo del modo "{{mode}}" hablan de un solo camión. Escriba "policy: fixed", o una palabra sola como semilla.',
    'more-problems_one': 'hay {{count}} problema más. Corrija antes estos.',
    'more-problems_other': 'hay {{count}} problemas más. Corrija antes estos.',
  },
  scenarioProblemWords: {
    onlyFormat: 'no existe ese formato. Escriba "format: {{newest}}".',
    write: 'Escríbalo.',
    quote: 'Ponga el texto entre comillas.',
    change: 'Cámbielo.',
    more: 'más',
    fewer: 'menos',
    nothing: 'nada',
    list: 'una lista',
    mapping: 'un grupo de claves',
    kinds: {
      string: 'texto',
      number: 'un número',
      int: 'un número entero',
      boolean: 'true o false',
      array: 'una lista',
      object: 'un grupo de claves',
    },
    forms: {
      slug: 'letras minúsculas, dígitos y guiones sencillos, como en torn-hose-2',
      'trouble-code':
        'una letra P, B, C o U y cuatro dígitos hexadecimales, entre comillas donde YAML leería un número: "P0456"',
    },
  },
} as const;
