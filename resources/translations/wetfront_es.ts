<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AdviceGroup</name>
    <message>
        <source>found</source>
        <translation>encontrado</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>recomendado</translation>
    </message>
    <message>
        <source>left</source>
        <translation>dejado</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>sin valor</translation>
    </message>
    <message>
        <source>left: %1</source>
        <translation>dejado: %1</translation>
    </message>
    <message>
        <source>found: %1</source>
        <translation>encontrado: %1</translation>
    </message>
    <message>
        <source>found %1, advised %2, left %3</source>
        <translation>encontrado %1, recomendado %2, dejado %3</translation>
    </message>
    <message>
        <source>≠ %1</source>
        <translation>≠ %1</translation>
    </message>
</context>
<context>
    <name>AdviceStep</name>
    <message>
        <source>Timer</source>
        <translation>Temporizador</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>one period of the pump&apos;s cycle: found, advised, left</source>
        <translation>un periodo del ciclo de la bomba: encontrado, recomendado, dejado</translation>
    </message>
    <message>
        <source>To be entered, as %1 asks</source>
        <translation>Lo que se ingresa, como lo pide %1</translation>
    </message>
    <message>
        <source>Assumed or changed</source>
        <translation>Supuesto o cambiado</translation>
    </message>
</context>
<context>
    <name>AirFold</name>
    <message>
        <source>Air picture</source>
        <translation>Gráfica del aire</translation>
    </message>
    <message>
        <source>outside, behind the pad, in the house</source>
        <translation>afuera, detrás del panel, en la caseta</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se conoce</translation>
    </message>
    <message>
        <source>the air outside, behind the pad and in the house</source>
        <translation>el aire afuera, detrás del panel y en la caseta</translation>
    </message>
</context>
<context>
    <name>AwakeWords</name>
    <message>
        <source>a reading is being timed</source>
        <translation>se está tomando el tiempo de una lectura</translation>
    </message>
    <message>
        <source>This tablet may go dark and sleep: touch it now and then. The time goes on all the same.</source>
        <translation>Esta tableta puede apagar la pantalla y dormirse: tóquela de vez en cuando. El tiempo sigue corriendo de todos modos.</translation>
    </message>
    <message>
        <source>This screen may go dark: touch it now and then. The time goes on all the same.</source>
        <translation>Esta pantalla puede apagarse: tóquela de vez en cuando. El tiempo sigue corriendo de todos modos.</translation>
    </message>
    <message>
        <source>This tablet may sleep: keep its lid open and touch it now and then. The time goes on all the same.</source>
        <translation>Esta tableta puede dormirse: deje la tapa abierta y tóquela de vez en cuando. El tiempo sigue corriendo de todos modos.</translation>
    </message>
</context>
<context>
    <name>BankHistory</name>
    <message>
        <source>gets worse</source>
        <translation>empeora</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>BankThumbnail</name>
    <message>
        <source>bank with its pump on the left</source>
        <translation>banco con su bomba a la izquierda</translation>
    </message>
    <message>
        <source>bank with its pump on the right</source>
        <translation>banco con su bomba a la derecha</translation>
    </message>
</context>
<context>
    <name>BundlesPage</name>
    <message>
        <source>Records to and from other machines</source>
        <translation>Registros de y para otros equipos</translation>
    </message>
    <message>
        <source>A bundle on a stick takes records to the office or to another tablet. Nothing is lost or doubled, however often it is taken in; a receipt comes back on the same stick.</source>
        <translation>Un paquete en una memoria lleva registros a la oficina o a otra tableta. Nada se pierde ni se duplica, por más veces que se reciba; un recibo vuelve en la misma memoria.</translation>
    </message>
    <message>
        <source>Choose the state %1?</source>
        <translation>¿Elegir el estado %1?</translation>
    </message>
    <message>
        <source>Lists and sheets show it from then on, here and wherever the next bundle goes. The other stays in the record&apos;s history.</source>
        <translation>Desde entonces lo muestran las listas y las hojas, aquí y adonde vaya el próximo paquete. El otro queda en el historial del registro.</translation>
    </message>
    <message>
        <source>Leave both</source>
        <translation>Dejar ambos</translation>
    </message>
    <message>
        <source>Choose it</source>
        <translation>Elegirlo</translation>
    </message>
    <message>
        <source>To another machine</source>
        <translation>Hacia otro equipo</translation>
    </message>
    <message>
        <source>What to take along, with the sheets of signed visits</source>
        <translation>Qué llevar, con las hojas de las visitas firmadas</translation>
    </message>
    <message>
        <source>No stick or card is plugged in.</source>
        <translation>No hay memoria ni tarjeta conectada.</translation>
    </message>
    <message>
        <source>Write to %1</source>
        <translation>Escribir en %1</translation>
    </message>
    <message>
        <source>Look for sticks</source>
        <translation>Buscar memorias</translation>
    </message>
    <message>
        <source>From another machine</source>
        <translation>Desde otro equipo</translation>
    </message>
    <message>
        <source>No bundle and no receipt is on a stick.</source>
        <translation>No hay paquete ni recibo en una memoria.</translation>
    </message>
    <message>
        <source>Touch one to see what is in it.</source>
        <translation>Toque uno para ver qué contiene.</translation>
    </message>
    <message>
        <source>Receipt %1, %2</source>
        <translation>Recibo %1, %2</translation>
    </message>
    <message>
        <source>Bundle %1, %2</source>
        <translation>Paquete %1, %2</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Recibirlo</translation>
    </message>
</context>
<context>
    <name>BusyPanel</name>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>CautionBox</name>
    <message>
        <source>DANGER</source>
        <translation>PELIGRO</translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation>ADVERTENCIA</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>PRECAUCIÓN</translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation>AVISO</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
</context>
<context>
    <name>ConditionsStep</name>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>At each bank</source>
        <translation>En cada banco</translation>
    </message>
    <message>
        <source>%1: air speed at several points, temperature behind, water caught</source>
        <translation>%1: velocidad del aire en varios puntos, temperatura detrás, agua captada</translation>
    </message>
    <message>
        <source>Flow by drawdown or meter</source>
        <translation>Caudal por descenso del nivel o medidor</translation>
    </message>
    <message>
        <source>For whoever wants to know more</source>
        <translation>Para quien quiera saber más</translation>
    </message>
    <message>
        <source>Water test</source>
        <translation>Análisis del agua</translation>
    </message>
    <message>
        <source>How good the instruments are</source>
        <translation>Qué tan buenos son los instrumentos</translation>
    </message>
</context>
<context>
    <name>CopiesPage</name>
    <message>
        <source>Copies of the records</source>
        <translation>Copias de los registros</translation>
    </message>
    <message>
        <source>Of the demo, no copies are made by themselves.</source>
        <translation>De la demostración no se hacen copias automáticas.</translation>
    </message>
    <message>
        <source>At the start of each day a copy goes into %1. It does not help when the tablet is lost or broken: a copy on a stick does.</source>
        <translation>Al empezar cada día se guarda una copia en %1. No sirve si la tableta se pierde o se daña: una copia en memoria USB sí.</translation>
    </message>
    <message>
        <source>On a stick or card</source>
        <translation>En memoria USB o tarjeta</translation>
    </message>
    <message>
        <source>None is plugged in.</source>
        <translation>No hay ninguna conectada.</translation>
    </message>
    <message>
        <source>Copy to %1</source>
        <translation>Copiar a %1</translation>
    </message>
    <message>
        <source>Look for sticks</source>
        <translation>Buscar memorias USB</translation>
    </message>
    <message>
        <source>Go back to a copy</source>
        <translation>Regresar a una copia</translation>
    </message>
    <message>
        <source>Copy of %1, %2</source>
        <translation>Copia de %1, %2</translation>
    </message>
    <message>
        <source>The file that holds the records now is kept beside them.</source>
        <translation>El archivo que ahora tiene los registros se conserva junto a ellos.</translation>
    </message>
    <message>
        <source>Keep the records as they are</source>
        <translation>Dejar los registros como están</translation>
    </message>
    <message>
        <source>Go back to this copy</source>
        <translation>Regresar a esta copia</translation>
    </message>
</context>
<context>
    <name>DayChartWords</name>
    <message>
        <source>limit of the house: %1</source>
        <translation>límite de la caseta: %1</translation>
    </message>
    <message>
        <source>Temperature, %1</source>
        <translation>Temperatura, %1</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>afuera</translation>
    </message>
    <message>
        <source>behind the pads</source>
        <translation>detrás de los paneles</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation>en la caseta</translation>
    </message>
    <message>
        <source>Share of the pads that is wet</source>
        <translation>Parte mojada de los paneles</translation>
    </message>
    <message>
        <source>Pumps run</source>
        <translation>Bombas trabajando</translation>
    </message>
    <message>
        <source>what if</source>
        <translation>qué pasa si</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>recomendado</translation>
    </message>
    <message>
        <source>found</source>
        <translation>encontrado</translation>
    </message>
</context>
<context>
    <name>DayFold</name>
    <message>
        <source>The hottest day, hour by hour</source>
        <translation>El día más caliente, hora por hora</translation>
    </message>
    <message>
        <source>found and advised laid over each other</source>
        <translation>lo encontrado y lo recomendado, uno sobre otro</translation>
    </message>
    <message>
        <source>For this day there lacks: %1</source>
        <translation>Para este día falta: %1</translation>
    </message>
    <message>
        <source>Thick: %1. Thin and broken: found. Dotted: the air outside.</source>
        <translation>Grueso: %1. Delgado y cortado: encontrado. Punteado: el aire de afuera.</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Supuesto: %1</translation>
    </message>
    <message>
        <source>For a season, put a weather file (EPW, or CSV with weather in its name) with the documents or on a stick.</source>
        <translation>Para una temporada, ponga un archivo de clima (EPW, o CSV con weather en su nombre) con los documentos o en una memoria.</translation>
    </message>
    <message>
        <source>Work out the season of %1</source>
        <translation>Calcular la temporada de %1</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>recomendado</translation>
    </message>
    <message>
        <source>Is there a cheaper cycle?</source>
        <translation>¿Hay un ciclo más barato?</translation>
    </message>
</context>
<context>
    <name>DayPicture</name>
    <message>
        <source>the hottest day: air outside, behind the pads and in the house, wet share of the pads, pump runs</source>
        <translation>el día más caliente: aire de afuera, detrás de los paneles y en la caseta, parte mojada de los paneles, encendidos de bomba</translation>
    </message>
</context>
<context>
    <name>DayTable</name>
    <message>
        <source>found</source>
        <translation>encontrado</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferencia</translation>
    </message>
</context>
<context>
    <name>DesktopRunWords</name>
    <message>
        <source>It could not go back to the copy %1. %2</source>
        <translation>No se pudo regresar a la copia %1. %2</translation>
    </message>
    <message>
        <source>The records are now as they are in the copy %1.</source>
        <translation>Los registros están ahora como en la copia %1.</translation>
    </message>
    <message>
        <source>The file that they replace is kept as %1.</source>
        <translation>El archivo que reemplazan se conserva como %1.</translation>
    </message>
</context>
<context>
    <name>EntryUndo</name>
    <message>
        <source>Entry</source>
        <translation>Dato</translation>
    </message>
    <message>
        <source>No entry to undo</source>
        <translation>Nada que deshacer</translation>
    </message>
    <message>
        <source>No entry to redo</source>
        <translation>Nada que rehacer</translation>
    </message>
</context>
<context>
    <name>FarmComparison</name>
    <message>
        <source>Compare the houses of this farm</source>
        <translation>Comparar las casetas de esta granja</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>What to compare</source>
        <translation>Qué comparar</translation>
    </message>
    <message>
        <source>Houses of this farm</source>
        <translation>Casetas de esta granja</translation>
    </message>
    <message>
        <source>one line for each bank</source>
        <translation>una línea por banco</translation>
    </message>
</context>
<context>
    <name>FieldRow</name>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
</context>
<context>
    <name>FindHouses</name>
    <message>
        <source>House, farm or customer</source>
        <translation>Caseta, granja o cliente</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Visit open</source>
        <translation>Visita abierta</translation>
    </message>
    <message>
        <source>Harm left</source>
        <translation>Queda daño</translation>
    </message>
    <message>
        <source>Fault or worse left</source>
        <translation>Queda falla o peor</translation>
    </message>
    <message>
        <source>Getting worse</source>
        <translation>Empeora</translation>
    </message>
    <message>
        <source>Visit due</source>
        <translation>Toca visita</translation>
    </message>
    <message>
        <source>%1 of %2 houses, %3 still to look at</source>
        <translation>%1 de %2 casetas, faltan %3 por ver</translation>
    </message>
    <message>
        <source>%1 of %2 houses</source>
        <translation>%1 de %2 casetas</translation>
    </message>
    <message>
        <source>Show all houses</source>
        <translation>Mostrar todas las casetas</translation>
    </message>
</context>
<context>
    <name>FindingCard</name>
    <message>
        <source>Harm</source>
        <translation>Daño</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Falla</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Desperdicio</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Likely, in this order:</source>
        <translation>Probable, en este orden:</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Show the reason</source>
        <translation>Mostrar la razón</translation>
    </message>
</context>
<context>
    <name>FindingMapsWords</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 Look: %2</source>
        <translation>%1 Revise: %2</translation>
    </message>
</context>
<context>
    <name>Fold</name>
    <message>
        <source>open; %1</source>
        <translation>abierto; %1</translation>
    </message>
    <message>
        <source>folded; %1</source>
        <translation>cerrado; %1</translation>
    </message>
</context>
<context>
    <name>FormLine</name>
    <message>
        <source>not entered</source>
        <translation>no ingresado</translation>
    </message>
    <message>
        <source>Back to %1</source>
        <translation>Volver a %1</translation>
    </message>
    <message>
        <source>%1: back to %2</source>
        <translation>%1: volver a %2</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
</context>
<context>
    <name>FormModel</name>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Not asked</source>
        <translation>No se preguntó</translation>
    </message>
</context>
<context>
    <name>HandoutCard</name>
    <message>
        <source>For the grower</source>
        <translation>Para el granjero</translation>
    </message>
    <message>
        <source>The summary says on one page, in plain words, what the pads need, what was changed and what is left to do. It does not stand in for the sheet.</source>
        <translation>El resumen dice en una página, con palabras sencillas, qué necesitan los paneles, qué se cambió y qué queda por hacer. No sustituye a la hoja.</translation>
    </message>
    <message>
        <source>Sheet onto a stick</source>
        <translation>Hoja a una memoria</translation>
    </message>
    <message>
        <source>Summary onto a stick</source>
        <translation>Resumen a una memoria</translation>
    </message>
    <message>
        <source>Print the summary</source>
        <translation>Imprimir el resumen</translation>
    </message>
    <message>
        <source>Hide the summary</source>
        <translation>Ocultar el resumen</translation>
    </message>
    <message>
        <source>Look at the summary</source>
        <translation>Ver el resumen</translation>
    </message>
    <message>
        <source>On which one?</source>
        <translation>¿En cuál?</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>the summary</source>
        <translation>el resumen</translation>
    </message>
</context>
<context>
    <name>HeaderFold</name>
    <message>
        <source>Flow by outlet</source>
        <translation>Caudal por orificio</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se conoce</translation>
    </message>
    <message>
        <source>flow by outlet of %1</source>
        <translation>caudal por orificio de %1</translation>
    </message>
</context>
<context>
    <name>HistoryChart</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Touch a visit, or go along with the arrows.</source>
        <translation>Toque una visita, o recórralas con las flechas.</translation>
    </message>
    <message>
        <source>the visit before</source>
        <translation>la visita anterior</translation>
    </message>
    <message>
        <source>the next visit</source>
        <translation>la visita siguiente</translation>
    </message>
    <message>
        <source>fewer days, wider</source>
        <translation>menos días, más ancho</translation>
    </message>
    <message>
        <source>more days</source>
        <translation>más días</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>all days</source>
        <translation>todos los días</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Gráfica</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>as a picture</source>
        <translation>como gráfica</translation>
    </message>
    <message>
        <source>as a table</source>
        <translation>como tabla</translation>
    </message>
</context>
<context>
    <name>HouseDelegate</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>visit open</source>
        <translation>visita abierta</translation>
    </message>
</context>
<context>
    <name>HousePage</name>
    <message>
        <source>Look at the open visit</source>
        <translation>Ver la visita abierta</translation>
    </message>
    <message>
        <source>Go on with the open visit</source>
        <translation>Seguir la visita abierta</translation>
    </message>
    <message>
        <source>Start a visit</source>
        <translation>Iniciar visita</translation>
    </message>
    <message>
        <source>Banks</source>
        <translation>Bancos</translation>
    </message>
    <message>
        <source>Over the years</source>
        <translation>A través de los años</translation>
    </message>
    <message>
        <source>Remove this house</source>
        <translation>Quitar esta caseta</translation>
    </message>
    <message>
        <source>Cautions: read them before anybody works on pump, header or pads</source>
        <translation>Precauciones: léalas antes de que alguien trabaje en bomba, distribuidor o paneles</translation>
    </message>
    <message>
        <source>What the settings cost</source>
        <translation>Lo que cuestan los ajustes</translation>
    </message>
</context>
<context>
    <name>HouseStep</name>
    <message>
        <source>House</source>
        <translation>Caseta</translation>
    </message>
    <message>
        <source>Pad banks, seen from outside</source>
        <translation>Bancos de paneles, vistos desde afuera</translation>
    </message>
    <message>
        <source>More about the header</source>
        <translation>Más del distribuidor</translation>
    </message>
    <message>
        <source>Add a bank</source>
        <translation>Agregar banco</translation>
    </message>
    <message>
        <source>Take %1 out</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation>Bombas</translation>
    </message>
    <message>
        <source>Sump, supply pipe and pump curve</source>
        <translation>Tanque, tubo de alimentación y curva de la bomba</translation>
    </message>
    <message>
        <source>Add a pump</source>
        <translation>Agregar bomba</translation>
    </message>
    <message>
        <source>Timers</source>
        <translation>Temporizadores</translation>
    </message>
    <message>
        <source>Add a timer</source>
        <translation>Agregar temporizador</translation>
    </message>
    <message>
        <source>Farm and its design day</source>
        <translation>Granja y su día de diseño</translation>
    </message>
    <message>
        <source>For a day, hour by hour: birds, fans, prices</source>
        <translation>Para un día, hora por hora: aves, ventiladores, precios</translation>
    </message>
</context>
<context>
    <name>HousesList</name>
    <message>
        <source>Houses</source>
        <translation>Casetas</translation>
    </message>
</context>
<context>
    <name>HousesPage</name>
    <message>
        <source>Houses</source>
        <translation>Casetas</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Quitados</translation>
    </message>
    <message>
        <source>New house</source>
        <translation>Caseta nueva</translation>
    </message>
    <message>
        <source>No house yet</source>
        <translation>Aún no hay casetas</translation>
    </message>
    <message>
        <source>Describe the first one: its pumps and banks, then time the water.</source>
        <translation>Describa la primera: sus bombas y bancos; luego tome el tiempo del agua.</translation>
    </message>
    <message>
        <source>Describe a house</source>
        <translation>Describir una caseta</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
</context>
<context>
    <name>LeavePanel</name>
    <message>
        <source>Stay here</source>
        <translation>Quedarse aquí</translation>
    </message>
    <message>
        <source>Close Wetfront</source>
        <translation>Cerrar Wetfront</translation>
    </message>
    <message>
        <source>Leave the page</source>
        <translation>Salir de aquí</translation>
    </message>
</context>
<context>
    <name>LeavingStep</name>
    <message>
        <source>Before leaving the house</source>
        <translation>Antes de dejar la caseta</translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation>pendientes: %1</translation>
    </message>
    <message>
        <source>all done</source>
        <translation>todo hecho</translation>
    </message>
</context>
<context>
    <name>LimitsFold</name>
    <message>
        <source>Margins and limits</source>
        <translation>Márgenes y límites</translation>
    </message>
</context>
<context>
    <name>LockedPanel</name>
    <message>
        <source>locked</source>
        <translation>bloqueado</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Hold to unlock</source>
        <translation>Mantener pulsado</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Wetfront, demo: nothing is kept</source>
        <translation>Wetfront, demostración: nada se guarda</translation>
    </message>
    <message>
        <source>Wetfront</source>
        <translation>Wetfront</translation>
    </message>
    <message>
        <source>Setting templates: one for each controller</source>
        <translation>Plantillas de ajustes: una por controlador</translation>
    </message>
    <message>
        <source>Setting template: %1</source>
        <translation>Plantilla de ajustes: %1</translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation>Copias de los registros</translation>
    </message>
    <message>
        <source>Removed: out of sight, and kept</source>
        <translation>Quitados: fuera de la vista, pero conservados</translation>
    </message>
    <message>
        <source>%1: its banks and visits</source>
        <translation>%1: sus bancos y visitas</translation>
    </message>
    <message>
        <source>Choose a house</source>
        <translation>Elija una caseta</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Read only. %1</source>
        <translation>Solo lectura. %1</translation>
    </message>
    <message>
        <source>Language, units and light</source>
        <translation>Idioma, unidades y luz</translation>
    </message>
    <message>
        <source>Records to and from other machines</source>
        <translation>Registros de y para otros equipos</translation>
    </message>
    <message>
        <source>Sheets of many visits: print or hand out</source>
        <translation>Hojas de muchas visitas: imprimir o entregar</translation>
    </message>
</context>
<context>
    <name>MaintenanceCard</name>
    <message>
        <source>Maintenance</source>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <source>Nothing is entered yet. Cleaned outlets, new pads or a new pump start a new comparison.</source>
        <translation>Aún no hay nada ingresado. Orificios limpiados, paneles nuevos o una bomba nueva empiezan una comparación nueva.</translation>
    </message>
    <message>
        <source>Each starts a new comparison of what it concerns.</source>
        <translation>Cada uno empieza una comparación nueva de lo que le toca.</translation>
    </message>
    <message>
        <source>Take out: %1</source>
        <translation>Quitar: %1</translation>
    </message>
    <message>
        <source>Enter maintenance</source>
        <translation>Ingresar mantenimiento</translation>
    </message>
</context>
<context>
    <name>MaintenancePanel</name>
    <message>
        <source>Maintenance</source>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation>¿Qué se hizo?</translation>
    </message>
    <message>
        <source>Which pump?</source>
        <translation>¿Qué bomba?</translation>
    </message>
    <message>
        <source>Which banks?</source>
        <translation>¿Qué bancos?</translation>
    </message>
    <message>
        <source>Day: %1</source>
        <translation>Día: %1</translation>
    </message>
    <message>
        <source>A month earlier</source>
        <translation>Un mes antes</translation>
    </message>
    <message>
        <source>A day earlier</source>
        <translation>Un día antes</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un día después</translation>
    </message>
    <message>
        <source>A month later</source>
        <translation>Un mes después</translation>
    </message>
    <message>
        <source>A visit of the same day counts as after it.</source>
        <translation>Una visita del mismo día cuenta como posterior.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>May be left empty.</source>
        <translation>Puede quedar vacía.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Ingresar</translation>
    </message>
</context>
<context>
    <name>MarkLine</name>
    <message>
        <source>undone</source>
        <translation>deshecha</translation>
    </message>
    <message>
        <source>%1  %2 (%3)</source>
        <translation>%1  %2 (%3)</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
</context>
<context>
    <name>MarksAtHandWords</name>
    <message>
        <source>Pump starts</source>
        <translation>La bomba arranca</translation>
    </message>
    <message>
        <source>Pump stops</source>
        <translation>La bomba para</translation>
    </message>
    <message>
        <source>Water at the far end of %1</source>
        <translation>Agua en el extremo lejano de %1</translation>
    </message>
    <message>
        <source>%1 drips evenly at the far end</source>
        <translation>%1 gotea parejo en el extremo lejano</translation>
    </message>
    <message>
        <source>%1 stops dripping</source>
        <translation>%1 deja de gotear</translation>
    </message>
    <message>
        <source>First dry patch on %1</source>
        <translation>Primera mancha seca en %1</translation>
    </message>
    <message>
        <source>Pump back on automatic</source>
        <translation>Bomba de vuelta en automático</translation>
    </message>
    <message>
        <source>pressed twice: not used</source>
        <translation>pulsada dos veces: no se usa</translation>
    </message>
    <message>
        <source>too soon for water: not used</source>
        <translation>muy pronto para el agua: no se usa</translation>
    </message>
</context>
<context>
    <name>NamesCard</name>
    <message>
        <source>Take out %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>NewHousePanel</name>
    <message>
        <source>New house</source>
        <translation>Caseta nueva</translation>
    </message>
    <message>
        <source>Farm</source>
        <translation>Granja</translation>
    </message>
    <message>
        <source>Name of the farm</source>
        <translation>Nombre de la granja</translation>
    </message>
    <message>
        <source>Name of the house</source>
        <translation>Nombre de la caseta</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Start the visit</source>
        <translation>Iniciar la visita</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Type hours and minutes, for example 09:30.</source>
        <translation>Escriba horas y minutos, por ejemplo 09:30.</translation>
    </message>
    <message>
        <source>Type a number.</source>
        <translation>Escriba un número.</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Leave empty</source>
        <translation>Dejar vacío</translation>
    </message>
</context>
<context>
    <name>PadKeys</name>
    <message>
        <source>colon</source>
        <translation>dos puntos</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>Erase</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>minus</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>PartsCard</name>
    <message>
        <source>Take over the change: %1</source>
        <translation>Adoptar el cambio: %1</translation>
    </message>
</context>
<context>
    <name>PhotoChooser</name>
    <message>
        <source>Add a photo</source>
        <translation>Agregar una foto</translation>
    </message>
    <message>
        <source>Looking for pictures</source>
        <translation>Buscando fotos</translation>
    </message>
    <message>
        <source>The newest in %1 and on what is plugged in. Touch one.</source>
        <translation>Las más nuevas en %1 y en lo que está conectado. Toque una.</translation>
    </message>
    <message>
        <source>No picture is in %1, and none on a stick. Take one with the tablet&apos;s camera, or plug a stick in.</source>
        <translation>No hay fotos en %1 ni en una memoria. Tome una con la cámara de la tableta, o conecte una memoria.</translation>
    </message>
    <message>
        <source>Picture %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>What it shows</source>
        <translation>Qué muestra</translation>
    </message>
    <message>
        <source>To a finding</source>
        <translation>De un hallazgo</translation>
    </message>
    <message>
        <source>Keep what the camera wrote into it: place, time, owner</source>
        <translation>Conservar lo que la cámara escribió en ella: lugar, hora, dueño</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Add this photo</source>
        <translation>Agregar esta foto</translation>
    </message>
</context>
<context>
    <name>PhotosCard</name>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Note to photo %1</source>
        <translation>Nota a la foto %1</translation>
    </message>
    <message>
        <source>Take photo %1 out</source>
        <translation>Quitar la foto %1</translation>
    </message>
    <message>
        <source>A photo of a pad&apos;s face, an outlet or a setting says in the office what words do not. Take it with the tablet&apos;s camera, then add it here.</source>
        <translation>Una foto de la cara de un panel, de un orificio o de un ajuste dice en la oficina lo que no dicen las palabras. Tómela con la cámara de la tableta y luego agréguela aquí.</translation>
    </message>
    <message>
        <source>No more photos fit into this visit</source>
        <translation>No caben más fotos en esta visita</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Agregar una foto</translation>
    </message>
</context>
<context>
    <name>PreferencesPanel</name>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>°F, ft, gpm</source>
        <translation>°F, ft, gpm</translation>
    </message>
    <message>
        <source>°C, m, L/min</source>
        <translation>°C, m, L/min</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Shade</source>
        <translation>Sombra</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Noche</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Setting templates</source>
        <translation>Plantillas de ajustes</translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation>Copias de los registros</translation>
    </message>
    <message>
        <source>Language, units and light</source>
        <translation>Idioma, unidades y luz</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Records to and from other machines</source>
        <translation>Registros de y para otros equipos</translation>
    </message>
</context>
<context>
    <name>ProblemBanner</name>
    <message>
        <source>Store now</source>
        <translation>Guardar ya</translation>
    </message>
    <message>
        <source>Not elsewhere</source>
        <translation>No en otro lugar</translation>
    </message>
    <message>
        <source>Write elsewhere</source>
        <translation>Guardar en otro lugar</translation>
    </message>
    <message>
        <source>Write to %1</source>
        <translation>Guardar en %1</translation>
    </message>
    <message>
        <source>Put them in</source>
        <translation>Incorporarlas</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
</context>
<context>
    <name>ProofLines</name>
    <message>
        <source>Set and seen</source>
        <translation>Ajustado y visto</translation>
    </message>
    <message>
        <source>set or expected</source>
        <translation>ajustado o esperado</translation>
    </message>
    <message>
        <source>seen ± U (95 %)</source>
        <translation>visto ± U (95&#xa0;%)</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>resultado</translation>
    </message>
</context>
<context>
    <name>ProofStep</name>
    <message>
        <source>press as it happens</source>
        <translation>pulse cuando suceda</translation>
    </message>
    <message>
        <source>I stand at (timer: %1)</source>
        <translation>Estoy en (temporizador: %1)</translation>
    </message>
    <message>
        <source>I stand at</source>
        <translation>Estoy en</translation>
    </message>
    <message>
        <source>the bank that is watched, with the water where it should be</source>
        <translation>el banco observado, con el agua donde debe estar</translation>
    </message>
    <message>
        <source>What you see</source>
        <translation>Lo que se ve</translation>
    </message>
    <message>
        <source>Marks, newest first</source>
        <translation>Marcas, la más nueva primero</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>Lock the glass: only the mark button and undo</source>
        <translation>Bloquear la pantalla: solo el botón de marcar y deshacer</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Something else happened</source>
        <translation>Pasó otra cosa</translation>
    </message>
</context>
<context>
    <name>ProofWords</name>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>no ingresado</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se conoce</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>antes de %1</translation>
    </message>
    <message>
        <source>may differ by %1</source>
        <translation>puede diferir en %1</translation>
    </message>
    <message>
        <source>as timed, at most %1 later</source>
        <translation>como se cronometró, a lo más %1 después</translation>
    </message>
    <message>
        <source>as worked out, at most %1 later</source>
        <translation>como se calculó, a lo más %1 después</translation>
    </message>
    <message>
        <source>%1: expected %2; %3</source>
        <translation>%1: esperado %2; %3</translation>
    </message>
    <message>
        <source>%1: expected %2; seen %3; %4</source>
        <translation>%1: esperado %2; visto %3; %4</translation>
    </message>
</context>
<context>
    <name>PumpOffWords</name>
    <message>
        <source>Pump off for %1</source>
        <translation>Bomba apagada por %1</translation>
    </message>
    <message>
        <source>Pump off: %1 left</source>
        <translation>Bomba apagada: quedan %1</translation>
    </message>
    <message>
        <source>Start the pump: %1 over</source>
        <translation>Arranque la bomba: pasada por %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>ReaderCard</name>
    <message>
        <source>The sheet&apos;s reader</source>
        <translation>Para quien lee la hoja</translation>
    </message>
    <message>
        <source>Language of the sheet</source>
        <translation>Idioma de la hoja</translation>
    </message>
    <message>
        <source>Units of the sheet</source>
        <translation>Unidades de la hoja</translation>
    </message>
    <message>
        <source>°F, ft, gpm</source>
        <translation>°F, ft, gpm</translation>
    </message>
    <message>
        <source>°C, m, L/min</source>
        <translation>°C, m, L/min</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
</context>
<context>
    <name>ReadingsCard</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Use again</source>
        <translation>Usar otra vez</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>pressed late or by mistake</source>
        <translation>pulsada tarde o por error</translation>
    </message>
    <message>
        <source>Marks, newest first</source>
        <translation>Marcas, la más nueva primero</translation>
    </message>
</context>
<context>
    <name>ReasonSheet</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regla</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Rounding</source>
        <translation>Redondeo</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
</context>
<context>
    <name>RemovalLine</name>
    <message>
        <source>Keep it</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>RemovedPage</name>
    <message>
        <source>Removed</source>
        <translation>Quitados</translation>
    </message>
    <message>
        <source>Nothing of it is deleted. A house brings its visits back, but for those that were removed by themselves.</source>
        <translation>Nada de esto se borra. Una caseta trae de vuelta sus visitas, menos las que se quitaron por separado.</translation>
    </message>
    <message>
        <source>Nothing is removed now.</source>
        <translation>No hay nada quitado.</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Traer de vuelta</translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation>Traer de vuelta %1</translation>
    </message>
</context>
<context>
    <name>RunningTime</name>
    <message>
        <source>elapsed %1</source>
        <translation>transcurrido %1</translation>
    </message>
</context>
<context>
    <name>SafetyStep</name>
    <message>
        <source>Who is here</source>
        <translation>Quién está aquí</translation>
    </message>
    <message>
        <source>Type a name</source>
        <translation>Escribir un nombre</translation>
    </message>
    <message>
        <source>Add the person</source>
        <translation>Agregar persona</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Agreed with the grower</source>
        <translation>Acordado con el granjero</translation>
    </message>
    <message>
        <source>The site is safe, the system is fit to be timed</source>
        <translation>El sitio es seguro y el sistema está listo para cronometrar</translation>
    </message>
</context>
<context>
    <name>SettingsHistory</name>
    <message>
        <source>Settings over the years</source>
        <translation>Ajustes a lo largo de los años</translation>
    </message>
    <message>
        <source>Settings of %1</source>
        <translation>Ajustes de %1</translation>
    </message>
</context>
<context>
    <name>SettingsStep</name>
    <message>
        <source>Timer</source>
        <translation>Temporizador</translation>
    </message>
    <message>
        <source>Take over the advice</source>
        <translation>Adoptar lo recomendado</translation>
    </message>
    <message>
        <source>Put the advice in place of what is entered?</source>
        <translation>¿Poner lo recomendado en lugar de lo ingresado?</translation>
    </message>
    <message>
        <source>Keep what is entered</source>
        <translation>Dejar lo ingresado</translation>
    </message>
    <message>
        <source>Put the advice in its place</source>
        <translation>Poner lo recomendado</translation>
    </message>
    <message>
        <source>Taken over. Enter it in the controller, then check each line against it.</source>
        <translation>Adoptado. Ingréselo en el controlador y luego compare cada línea.</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tiempo</translation>
    </message>
    <message>
        <source>How it adapts</source>
        <translation>Cómo se adapta</translation>
    </message>
    <message>
        <source>When pads may run</source>
        <translation>Cuándo trabajan los paneles</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Enjuague</translation>
    </message>
    <message>
        <source>What the controller itself was told and shows</source>
        <translation>Lo que se le ingresó al controlador y lo que muestra</translation>
    </message>
    <message>
        <source>Differs from the advice</source>
        <translation>Difiere de lo recomendado</translation>
    </message>
    <message>
        <source>≠ %1: %2</source>
        <translation>≠ %1: %2</translation>
    </message>
</context>
<context>
    <name>SettingsViewModel</name>
    <message>
        <source>Row %1</source>
        <translation>Fila %1</translation>
    </message>
</context>
<context>
    <name>SheetStep</name>
    <message>
        <source>Something is still open. Sign all the same?</source>
        <translation>Queda algo pendiente. ¿Firmar de todos modos?</translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation>Aún no</translation>
    </message>
    <message>
        <source>Sign all the same</source>
        <translation>Firmar de todos modos</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Type a name</source>
        <translation>Escribir un nombre</translation>
    </message>
    <message>
        <source>Add the person</source>
        <translation>Agregar persona</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Type an instrument</source>
        <translation>Escribir un instrumento</translation>
    </message>
    <message>
        <source>Add the instrument</source>
        <translation>Agregar instrumento</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Last checked on</source>
        <translation>Última revisión</translation>
    </message>
    <message>
        <source>Open points</source>
        <translation>Puntos pendientes</translation>
    </message>
    <message>
        <source>Strainer to be cleaned</source>
        <translation>Limpiar el colador</translation>
    </message>
    <message>
        <source>Outlets to be cleaned</source>
        <translation>Limpiar los orificios</translation>
    </message>
    <message>
        <source>Pads to be replaced</source>
        <translation>Reemplazar paneles</translation>
    </message>
    <message>
        <source>Pump to be looked at</source>
        <translation>Revisar la bomba</translation>
    </message>
    <message>
        <source>Time the dry-out on a cooler day</source>
        <translation>Tomar el secado en un día más fresco</translation>
    </message>
    <message>
        <source>Type an open point</source>
        <translation>Escribir un pendiente</translation>
    </message>
    <message>
        <source>Add the open point</source>
        <translation>Agregar pendiente</translation>
    </message>
    <message>
        <source>Open point</source>
        <translation>Punto pendiente</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar PDF</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>page %1 of the sheet</source>
        <translation>página %1 de la hoja</translation>
    </message>
    <message>
        <source>Only the picture below follows: saved and printed is the sheet as it was signed.</source>
        <translation>Solo cambia la imagen de abajo: se guarda e imprime la hoja tal como se firmó.</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Sheets of many visits</source>
        <translation>Hojas de muchas visitas</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Cuáles</translation>
    </message>
    <message>
        <source>Houses</source>
        <translation>Casetas</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visitas</translation>
    </message>
    <message>
        <source>Every signed one</source>
        <translation>Todas las firmadas</translation>
    </message>
    <message>
        <source>Last of each house</source>
        <translation>La última de cada caseta</translation>
    </message>
    <message>
        <source>As what</source>
        <translation>En qué forma</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Summaries for the grower</source>
        <translation>Resúmenes para el granjero</translation>
    </message>
    <message>
        <source>A sheet that was kept at the signing comes as it was handed out; all others are drawn for the reader below.</source>
        <translation>Una hoja que se guardó al firmar sale como se entregó; todas las demás se dibujan para quien lee, como se elige abajo.</translation>
    </message>
    <message>
        <source>Where to</source>
        <translation>Adónde</translation>
    </message>
    <message>
        <source>Print them</source>
        <translation>Imprimirlas</translation>
    </message>
    <message>
        <source>Onto this tablet</source>
        <translation>A esta tableta</translation>
    </message>
    <message>
        <source>Onto %1</source>
        <translation>A %1</translation>
    </message>
    <message>
        <source>Look for sticks</source>
        <translation>Buscar memorias USB</translation>
    </message>
    <message>
        <source>No stick is plugged in.</source>
        <translation>No hay memoria USB conectada.</translation>
    </message>
</context>
<context>
    <name>SignaturePad</name>
    <message>
        <source>Signature of %1, %2</source>
        <translation>Firma de %1, %2</translation>
    </message>
    <message>
        <source>Signature of %1</source>
        <translation>Firma de %1</translation>
    </message>
    <message>
        <source>Kept and printed as the lines that are drawn here, with name and time. It is not a qualified electronic signature: local law decides what it is worth. To sign on paper instead, cancel: the sheet keeps a line.</source>
        <translation>Se guarda y se imprime como las líneas que se dibujan aquí, con nombre y hora. No es una firma electrónica calificada: la ley local decide cuánto vale. Para firmar en papel, cancele: la hoja conserva un renglón.</translation>
    </message>
    <message>
        <source>Field to sign on, with finger, glove or pen</source>
        <translation>Campo para firmar, con dedo, guante o lápiz</translation>
    </message>
    <message>
        <source>Take this signature</source>
        <translation>Usar esta firma</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>SignersCard</name>
    <message>
        <source>Not signed</source>
        <translation>Sin firmar</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Firmar</translation>
    </message>
    <message>
        <source>Signing freezes the visit; a correction is a new sheet that names this one. Draw signatures first, then sign: whatever is changed in between takes them off.</source>
        <translation>Al firmar, la visita ya no cambia; una corrección es una hoja nueva que nombra a esta. Primero dibuje las firmas y luego firme: cualquier cambio entre medio las quita.</translation>
    </message>
    <message>
        <source>Name the person who signs first.</source>
        <translation>Primero nombre a la persona que firma.</translation>
    </message>
    <message>
        <source>signature of %1</source>
        <translation>firma de %1</translation>
    </message>
    <message>
        <source>Draw again</source>
        <translation>Redibujar</translation>
    </message>
    <message>
        <source>Draw the signature</source>
        <translation>Dibujar la firma</translation>
    </message>
    <message>
        <source>Take off the signature of %1</source>
        <translation>Quitar la firma de %1</translation>
    </message>
    <message>
        <source>Sign as %1</source>
        <translation>Firmar como %1</translation>
    </message>
</context>
<context>
    <name>SplitCard</name>
    <message>
        <source>Changed on two machines: %1</source>
        <translation>Cambiado en dos equipos: %1</translation>
    </message>
    <message>
        <source>Both are kept. The first is shown until one is chosen.</source>
        <translation>Se conservan ambos. Se muestra el primero hasta que se elija uno.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>the first, %1</source>
        <translation>el primero, %1</translation>
    </message>
    <message>
        <source>the other, %1</source>
        <translation>el otro, %1</translation>
    </message>
    <message>
        <source>Choose %1</source>
        <translation>Elegir %1</translation>
    </message>
    <message>
        <source>They differ in places that no page shows.</source>
        <translation>Difieren en lugares que ninguna página muestra.</translation>
    </message>
</context>
<context>
    <name>StartProblem</name>
    <message>
        <source>Wetfront cannot open its records</source>
        <translation>Wetfront no puede abrir sus registros</translation>
    </message>
    <message>
        <source>Wetfront has written nothing: the file is as it was found.</source>
        <translation>Wetfront no ha escrito nada: el archivo está como se encontró.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar otra vez</translation>
    </message>
    <message>
        <source>Look at the records</source>
        <translation>Ver los registros</translation>
    </message>
    <message>
        <source>The file can be read. Houses, visits and sheets are shown; nothing can be timed or entered.</source>
        <translation>El archivo se puede leer. Se muestran casetas, visitas y hojas; no se puede cronometrar ni ingresar nada.</translation>
    </message>
    <message>
        <source>Open read-only</source>
        <translation>Abrir solo lectura</translation>
    </message>
    <message>
        <source>The newest copy that is whole</source>
        <translation>La copia completa más nueva</translation>
    </message>
    <message>
        <source>The file that cannot be opened is kept beside the records, as it is.</source>
        <translation>El archivo que no se puede abrir se conserva junto a los registros, tal como está.</translation>
    </message>
    <message>
        <source>Go back to the copy of %1</source>
        <translation>Regresar a la copia del %1</translation>
    </message>
</context>
<context>
    <name>StepTabs</name>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>complete</source>
        <translation>completo</translation>
    </message>
</context>
<context>
    <name>StickWords</name>
    <message>
        <source>There is no room left on %1. Nothing is lost: make room there, or take another stick.</source>
        <translation>Ya no hay espacio en %1. No se perdió nada: haga espacio ahí o tome otra memoria USB.</translation>
    </message>
    <message>
        <source>Nothing can be written to %1: it is read-only. Nothing is lost: slide its lock back, or take another stick.</source>
        <translation>No se puede escribir en %1: es de solo lectura. No se perdió nada: quite su seguro o tome otra memoria USB.</translation>
    </message>
    <message>
        <source>%1 was pulled out or does not answer. Nothing is lost: plug it in again, then press once more.</source>
        <translation>%1 se sacó o no responde. No se perdió nada: conéctela de nuevo y presione otra vez.</translation>
    </message>
    <message>
        <source>%1 does not give back what was written to it. Nothing is lost: take another stick and keep nothing on this one.</source>
        <translation>%1 no devuelve lo que se escribió en ella. No se perdió nada: tome otra memoria USB y no guarde nada en esta.</translation>
    </message>
    <message>
        <source>It could not be written to %1 (%2). Nothing is lost: take another stick or folder.</source>
        <translation>No se pudo escribir en %1 (%2). No se perdió nada: tome otra memoria USB o carpeta.</translation>
    </message>
    <message>
        <source>No stick is plugged in. Plug one in, wait a moment, then press once more.</source>
        <translation>No hay memoria USB conectada. Conecte una, espere un momento y presione otra vez.</translation>
    </message>
</context>
<context>
    <name>StopwatchPanel</name>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>I stand at</source>
        <translation>Estoy en</translation>
    </message>
    <message>
        <source>When it stops, the fans are</source>
        <translation>Al parar, los ventiladores están</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Parados</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>Activos</translation>
    </message>
    <message>
        <source>the bank, with the water where it should be</source>
        <translation>el banco, con el agua donde debe estar</translation>
    </message>
    <message>
        <source>No earlier visit, and no flow and header bore to work it out from: only the time is shown.</source>
        <translation>No hay visita anterior, ni caudal y diámetro del distribuidor para calcularlo: solo se muestra el tiempo.</translation>
    </message>
</context>
<context>
    <name>StopwatchQuestions</name>
    <message>
        <source>Who stops the pump?</source>
        <translation>¿Quién para la bomba?</translation>
    </message>
    <message>
        <source>Who starts the pump?</source>
        <translation>¿Quién arranca la bomba?</translation>
    </message>
    <message>
        <source>I, here</source>
        <translation>Yo, aquí</translation>
    </message>
    <message>
        <source>I, and walk</source>
        <translation>Yo, y camino</translation>
    </message>
    <message>
        <source>Helper</source>
        <translation>Ayudante</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Temporizador</translation>
    </message>
    <message>
        <source>Fans</source>
        <translation>Ventiladores</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Parados</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>Activos</translation>
    </message>
    <message>
        <source>Pads</source>
        <translation>Paneles</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Secos</translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation>Gotean</translation>
    </message>
    <message>
        <source>Between</source>
        <translation>A medias</translation>
    </message>
</context>
<context>
    <name>TemplateCard</name>
    <message>
        <source>Cannot be used yet. %1</source>
        <translation>Aún no se puede usar. %1</translation>
    </message>
</context>
<context>
    <name>TemplateGroup</name>
    <message>
        <source>On the controller: %1</source>
        <translation>En el controlador: %1</translation>
    </message>
</context>
<context>
    <name>TemplateImport</name>
    <message>
        <source>Add a template from a file</source>
        <translation>Agregar una plantilla de un archivo</translation>
    </message>
    <message>
        <source>Found in %1 and on what is plugged in:</source>
        <translation>Encontrado en %1 y en lo que está conectado:</translation>
    </message>
    <message>
        <source>No file is in %1, and none on a stick.</source>
        <translation>No hay archivos en %1 ni en una memoria USB.</translation>
    </message>
    <message>
        <source>Another file, with its folder</source>
        <translation>Otro archivo, con su carpeta</translation>
    </message>
    <message>
        <source>Look at that file</source>
        <translation>Ver ese archivo</translation>
    </message>
    <message>
        <source>Don&apos;t add it</source>
        <translation>No agregarla</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Add this template</source>
        <translation>Agregar plantilla</translation>
    </message>
</context>
<context>
    <name>TemplateOrder</name>
    <message>
        <source>In this order it asks</source>
        <translation>En este orden pregunta</translation>
    </message>
</context>
<context>
    <name>TemplateOrderLine</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Move %1 up</source>
        <translation>Subir %1</translation>
    </message>
    <message>
        <source>Move %1 down</source>
        <translation>Bajar %1</translation>
    </message>
</context>
<context>
    <name>TemplatePage</name>
    <message>
        <source>Cannot be used yet. %1</source>
        <translation>Aún no se puede usar. %1</translation>
    </message>
    <message>
        <source>The controller</source>
        <translation>El controlador</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Kind of timer</source>
        <translation>Tipo de temporizador</translation>
    </message>
    <message>
        <source>Its on-time counts from</source>
        <translation>Su encendido se cuenta desde</translation>
    </message>
    <message>
        <source>Trim rows</source>
        <translation>Filas de corrección</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 fila</translation>
    </message>
    <message>
        <source>2 rows</source>
        <translation>2 filas</translation>
    </message>
    <message>
        <source>3 rows</source>
        <translation>3 filas</translation>
    </message>
    <message>
        <source>4 rows</source>
        <translation>4 filas</translation>
    </message>
    <message>
        <source>What it demands between settings</source>
        <translation>Lo que exige entre los ajustes</translation>
    </message>
    <message>
        <source>As a file, for another tablet</source>
        <translation>Como archivo, para otra tableta</translation>
    </message>
    <message>
        <source>Write to documents</source>
        <translation>Guardar en documentos</translation>
    </message>
    <message>
        <source>Write to %1</source>
        <translation>Guardar en %1</translation>
    </message>
    <message>
        <source>Look for sticks</source>
        <translation>Buscar memorias USB</translation>
    </message>
    <message>
        <source>No stick is plugged in.</source>
        <translation>No hay memoria USB conectada.</translation>
    </message>
</context>
<context>
    <name>TemplateProblemsWords</name>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation>Paso más pequeño</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Trim rows</source>
        <translation>Filas de corrección</translation>
    </message>
    <message>
        <source>Between settings</source>
        <translation>Entre ajustes</translation>
    </message>
</context>
<context>
    <name>TemplateSettingForm</name>
    <message>
        <source>not entered</source>
        <translation>no ingresado</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>As the controller writes it.</source>
        <translation>Como lo escribe el controlador.</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation>Paso más pequeño</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>Steps count from it.</source>
        <translation>Los pasos se cuentan desde aquí.</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>TemplatesPage</name>
    <message>
        <source>Setting templates</source>
        <translation>Plantillas de ajustes</translation>
    </message>
    <message>
        <source>Describe a controller once: which settings it has, what it calls them, and which steps it can hold. Advice then comes in its words and steps.</source>
        <translation>Describa un controlador una vez: qué ajustes tiene, cómo los llama y qué pasos admite. La recomendación sale entonces con sus palabras y pasos.</translation>
    </message>
    <message>
        <source>None of your own yet. Make one from a plain one below, or add one from a file.</source>
        <translation>Aún no hay plantillas propias. Haga una a partir de una sencilla de abajo, o agregue una de un archivo.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Abrir %1</translation>
    </message>
    <message>
        <source>Make one from this</source>
        <translation>Hacer una de esta</translation>
    </message>
    <message>
        <source>Make one from %1</source>
        <translation>Hacer una de %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Add one from a file</source>
        <translation>Agregar de un archivo</translation>
    </message>
    <message>
        <source>Plain ones, to start from</source>
        <translation>Sencillas, para empezar</translation>
    </message>
    <message>
        <source>generic, stays as it is</source>
        <translation>genérica, queda como está</translation>
    </message>
</context>
<context>
    <name>TimeStep</name>
    <message>
        <source>press now: it was already there</source>
        <translation>pulse ahora: ya estaba ahí</translation>
    </message>
    <message>
        <source>press as it happens</source>
        <translation>pulse cuando suceda</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Bloquear</translation>
    </message>
    <message>
        <source>Lock the glass: only the mark button and undo</source>
        <translation>Bloquear la pantalla: solo el botón de marcar y deshacer</translation>
    </message>
    <message>
        <source>Back on automatic</source>
        <translation>En automático</translation>
    </message>
    <message>
        <source>Pump is back on automatic</source>
        <translation>La bomba está en automático</translation>
    </message>
    <message>
        <source>Is the pump back on automatic?</source>
        <translation>¿Está la bomba de vuelta en automático?</translation>
    </message>
    <message>
        <source>This ends the reading that runs. Undo brings it back.</source>
        <translation>Esto termina la lectura en curso. Deshacer la trae de vuelta.</translation>
    </message>
    <message>
        <source>Go on timing</source>
        <translation>Seguir midiendo</translation>
    </message>
    <message>
        <source>It is on automatic</source>
        <translation>Está en automático</translation>
    </message>
    <message>
        <source>As it happens</source>
        <translation>Al suceder</translation>
    </message>
    <message>
        <source>Already there</source>
        <translation>Ya estaba</translation>
    </message>
    <message>
        <source>It was already there</source>
        <translation>Ya estaba ahí</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Something else happened</source>
        <translation>Pasó otra cosa</translation>
    </message>
    <message>
        <source>Go there</source>
        <translation>Ir ahí</translation>
    </message>
</context>
<context>
    <name>TimingWords</name>
    <message>
        <source>%1 readings, spread %2</source>
        <translation>%1 lecturas, dispersión %2</translation>
    </message>
    <message>
        <source>one reading, spread as on the other banks</source>
        <translation>una lectura, dispersión como en los otros bancos</translation>
    </message>
    <message>
        <source>one reading, spread assumed</source>
        <translation>una lectura, dispersión supuesta</translation>
    </message>
</context>
<context>
    <name>ToEnterLine</name>
    <message>
        <source>cannot be held</source>
        <translation>no se admite</translation>
    </message>
</context>
<context>
    <name>TopLine</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>UndoLine</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>VisitsCard</name>
    <message>
        <source>Visits</source>
        <translation>Visitas</translation>
    </message>
    <message>
        <source>Not visited yet.</source>
        <translation>Aún sin visita.</translation>
    </message>
    <message>
        <source>Visit of %1</source>
        <translation>Visita del %1</translation>
    </message>
    <message>
        <source>Remove the visit of %1</source>
        <translation>Quitar la visita del %1</translation>
    </message>
    <message>
        <source>All visits: %1</source>
        <translation>Todas las visitas: %1</translation>
    </message>
    <message>
        <source>Sheets of these visits</source>
        <translation>Hojas de estas visitas</translation>
    </message>
</context>
<context>
    <name>WhatIfFold</name>
    <message>
        <source>What if</source>
        <translation>Qué pasa si</translation>
    </message>
    <message>
        <source>move period and on-time, see the cycle</source>
        <translation>mueva periodo y encendido, vea el ciclo</translation>
    </message>
    <message>
        <source>one period of the pump&apos;s cycle: found, what if</source>
        <translation>un periodo del ciclo de la bomba: encontrado, qué pasa si</translation>
    </message>
    <message>
        <source>%1 in every %2</source>
        <translation>%1 en cada %2</translation>
    </message>
    <message>
        <source>Back to the advice</source>
        <translation>Volver a lo recomendado</translation>
    </message>
    <message>
        <source>Back to what was found</source>
        <translation>Volver a lo encontrado</translation>
    </message>
    <message>
        <source>Nothing is found against these settings.</source>
        <translation>No hay hallazgos contra estos ajustes.</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>A run of %1 in every %2 keeps every part of the pads wet at the hottest hour: it cools as continuous pumping does, with less pumping.</source>
        <translation>Un encendido de %1 en cada %2 mantiene mojadas todas las partes de los paneles en la hora más calurosa: enfría igual que el bombeo continuo, con menos bombeo.</translation>
    </message>
    <message>
        <source>This timer has no rinse, and short runs leave a dry pad dry for a long time: run the pump by hand for %1 when the pads start each day.</source>
        <translation>Este temporizador no tiene enjuague, y los encendidos cortos dejan seco por mucho tiempo un panel seco: haga trabajar la bomba a mano durante %1 cuando los paneles arranquen cada día.</translation>
    </message>
    <message>
        <source>This timer has no rinse, and short runs leave a dry pad dry for a long time: run the pump by hand until the far end drips evenly when the pads start each day.</source>
        <translation>Este temporizador no tiene enjuague, y los encendidos cortos dejan seco por mucho tiempo un panel seco: haga trabajar la bomba a mano hasta que el extremo lejano gotee parejo cuando los paneles arranquen cada día.</translation>
    </message>
    <message>
        <source>More evaporated during the readings than the farm&apos;s design day would: check its design temperatures (design against readings: %1). What is advised holds for the weather of the readings.</source>
        <translation>Durante las lecturas se evaporó más que en el día de diseño de la granja: revise sus temperaturas de diseño (diseño contra lecturas: %1). Lo recomendado vale para el clima de las lecturas.</translation>
    </message>
    <message>
        <source>This timer runs the pump all the while the pads are called for: nothing to set.</source>
        <translation>Este temporizador hace trabajar la bomba todo el tiempo que se piden los paneles: no hay nada que ajustar.</translation>
    </message>
    <message>
        <source>This timer runs the pump all the while the pads are called for: no cycle to set.</source>
        <translation>Este temporizador hace trabajar la bomba todo el tiempo que se piden los paneles: no hay ciclo que ajustar.</translation>
    </message>
    <message>
        <source>No pad bank is fed by this timer&apos;s pumps: describe them first.</source>
        <translation>Las bombas de este temporizador no alimentan ningún banco de paneles: descríbalos primero.</translation>
    </message>
    <message>
        <source>Continuous pumping for now. A cycle needs more, first: %1.</source>
        <translation>Bombeo continuo por ahora. Un ciclo necesita más; primero: %1.</translation>
    </message>
    <message>
        <source>Continuous pumping: no cycle could be worked out (%1).</source>
        <translation>Bombeo continuo: no se pudo calcular ningún ciclo (%1).</translation>
    </message>
    <message>
        <source>Continuous pumping, and more flow: at the hottest hour a pad dries faster than water comes.</source>
        <translation>Bombeo continuo, y más caudal: en la hora más calurosa un panel se seca más rápido de lo que llega el agua.</translation>
    </message>
    <message>
        <source>Continuous pumping: with a rest of %1 in %2, %3 would not stay wet at the hottest hour.</source>
        <translation>Bombeo continuo: con un descanso de %1 en %2, %3 no quedaría mojado en la hora más calurosa.</translation>
    </message>
    <message>
        <source>seeing a drip or a dry patch %1</source>
        <translation>ver un goteo o una mancha seca %1</translation>
    </message>
    <message>
        <source>a start by signal %1</source>
        <translation>un arranque por señal %1</translation>
    </message>
    <message>
        <source>seeing the first dry patch %1 of the dry-out time</source>
        <translation>ver la primera mancha seca %1 del tiempo de secado</translation>
    </message>
    <message>
        <source>hottest hour no milder than the weather of the readings (worked out: %1 of its evaporation)</source>
        <translation>la hora más calurosa no es más suave que el clima de las lecturas (calculado: %1 de su evaporación)</translation>
    </message>
    <message>
        <source>smallest step of a timer %1</source>
        <translation>paso mínimo de un temporizador %1</translation>
    </message>
    <message>
        <source>pad effectiveness %1</source>
        <translation>eficiencia del panel %1</translation>
    </message>
    <message>
        <source>A timer makes no extra cooling and no drier air. Pumping all the while the pads are called for is the reference; a cycle is as good only if every part of the pad stays wet.</source>
        <translation>Un temporizador no da más enfriamiento ni aire más seco. Bombear todo el tiempo que se piden los paneles es la referencia; un ciclo es igual de bueno solo si todas las partes del panel quedan mojadas.</translation>
    </message>
    <message>
        <source>The margins and limits that were changed for this farm cannot be used together (%1): everything is worked out with the program&apos;s own until that is put right.</source>
        <translation>Los márgenes y límites que se cambiaron para esta granja no se pueden usar juntos (%1): todo se calcula con los del programa hasta que eso se corrija.</translation>
    </message>
    <message>
        <source>%1: fill time</source>
        <translation>%1: tiempo de llenado</translation>
    </message>
    <message>
        <source>%1: wet-through time from a dry pad (or a wet start)</source>
        <translation>%1: tiempo de mojado completo desde un panel seco (o un arranque en mojado)</translation>
    </message>
    <message>
        <source>%1: wet-through time clearly above the fill time; time both again</source>
        <translation>%1: tiempo de mojado completo claramente mayor que el de llenado; tome los dos otra vez</translation>
    </message>
    <message>
        <source>%1: dry-out time with the fans running (or a wet start)</source>
        <translation>%1: tiempo de secado con los ventiladores trabajando (o un arranque en mojado)</translation>
    </message>
    <message>
        <source>%1: wet start with the fans running all the while</source>
        <translation>%1: arranque en mojado con los ventiladores trabajando todo el tiempo</translation>
    </message>
    <message>
        <source>%1: readings in drier air (%2)</source>
        <translation>%1: lecturas con aire más seco (%2)</translation>
    </message>
    <message>
        <source>a design day on which water evaporates: check dry and wet bulb</source>
        <translation>un día de diseño en que el agua se evapora: revise bulbo seco y bulbo húmedo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Lower: pads run while moving air alone would do, and make the house damp.</source>
        <translation>Más baja: los paneles trabajan cuando bastaría mover el aire, y humedecen la caseta.</translation>
    </message>
    <message>
        <source>Lower: pads may run in a cooler house.</source>
        <translation>Más baja: los paneles pueden trabajar con la caseta más fresca.</translation>
    </message>
    <message>
        <source>Lower: pads stop while they would still cool.</source>
        <translation>Más bajo: los paneles paran cuando todavía enfriarían.</translation>
    </message>
    <message>
        <source>Earlier: pads run before they are of use.</source>
        <translation>Más temprano: los paneles trabajan antes de servir de algo.</translation>
    </message>
    <message>
        <source>Earlier: pads stop while they would still help.</source>
        <translation>Más temprano: los paneles paran cuando todavía ayudarían.</translation>
    </message>
    <message>
        <source>Shorter: the pump starts more often and has less time to rest.</source>
        <translation>Más corto: la bomba arranca más seguido y tiene menos tiempo de descanso.</translation>
    </message>
    <message>
        <source>Shorter: at the hottest hour the far end gets less water than dries there.</source>
        <translation>Más corto: en la hora más calurosa el extremo lejano recibe menos agua de la que ahí se seca.</translation>
    </message>
    <message>
        <source>Lower: on a hot afternoon a run can&apos;t be made as long as a dry pad needs.</source>
        <translation>Más bajo: en una tarde calurosa un encendido no puede durar lo que necesita un panel seco.</translation>
    </message>
    <message>
        <source>Smaller: the on-time follows the heat slowly.</source>
        <translation>Más pequeño: el tiempo de encendido sigue al calor despacio.</translation>
    </message>
    <message>
        <source>Narrower: the on-time answers to small changes of temperature.</source>
        <translation>Más angosta: el tiempo de encendido responde a cambios pequeños de temperatura.</translation>
    </message>
    <message>
        <source>Shorter: it trims again before the house has answered.</source>
        <translation>Más corto: corrige otra vez antes de que la caseta haya respondido.</translation>
    </message>
    <message>
        <source>Earlier: the pads are wet before they are of use.</source>
        <translation>Más temprano: los paneles se mojan antes de servir de algo.</translation>
    </message>
    <message>
        <source>Shorter: the rinse may not reach every part of the pads.</source>
        <translation>Más corta: el enjuague puede no llegar a todas las partes de los paneles.</translation>
    </message>
    <message>
        <source>Higher: the birds get warmer before pads help.</source>
        <translation>Más alta: las aves se calientan más antes de que ayuden los paneles.</translation>
    </message>
    <message>
        <source>Higher: pads are off in a house that is warmer.</source>
        <translation>Más alta: los paneles están apagados en una caseta más caliente.</translation>
    </message>
    <message>
        <source>Higher: pads run in air that they hardly cool.</source>
        <translation>Más alto: los paneles trabajan con aire que apenas enfrían.</translation>
    </message>
    <message>
        <source>Later: pads are off while they would help.</source>
        <translation>Más tarde: los paneles están apagados cuando ayudarían.</translation>
    </message>
    <message>
        <source>Later: pads go wet into the humid night.</source>
        <translation>Más tarde: los paneles entran mojados a la noche húmeda.</translation>
    </message>
    <message>
        <source>Longer: the far end waits longer for water and dries further.</source>
        <translation>Más largo: el extremo lejano espera más el agua y se seca más.</translation>
    </message>
    <message>
        <source>Longer: more water is pumped than the pads take up.</source>
        <translation>Más largo: se bombea más agua de la que toman los paneles.</translation>
    </message>
    <message>
        <source>Higher: runs may grow longer than wets the pads.</source>
        <translation>Más alto: los encendidos pueden alargarse más de lo que moja los paneles.</translation>
    </message>
    <message>
        <source>Larger: each review changes the on-time by more, and it may swing.</source>
        <translation>Más grande: cada revisión cambia más el tiempo de encendido, y este puede oscilar.</translation>
    </message>
    <message>
        <source>Wider: the on-time answers later to heat.</source>
        <translation>Más ancha: el tiempo de encendido responde más tarde al calor.</translation>
    </message>
    <message>
        <source>Longer: the on-time follows the heat slowly.</source>
        <translation>Más largo: el tiempo de encendido sigue al calor despacio.</translation>
    </message>
    <message>
        <source>Later: dust and salts stay in the pads for longer.</source>
        <translation>Más tarde: el polvo y las sales quedan más tiempo en los paneles.</translation>
    </message>
    <message>
        <source>Longer: it pumps longer than the rinse needs.</source>
        <translation>Más larga: bombea más tiempo del que necesita el enjuague.</translation>
    </message>
    <message>
        <source>evaporation at the hottest hour, against that of the test: worked out %1, counts as 1 so that the pad stays wet in the weather of the test as well</source>
        <translation>evaporación en la hora más calurosa, contra la de la prueba: calculada %1, cuenta como 1 para que el panel quede mojado también con el clima de la prueba</translation>
    </message>
    <message>
        <source>evaporation at the hottest hour, against that of the test</source>
        <translation>evaporación en la hora más calurosa, contra la de la prueba</translation>
    </message>
    <message>
        <source>fill time</source>
        <translation>tiempo de llenado</translation>
    </message>
    <message>
        <source>wet-through time</source>
        <translation>tiempo de mojado completo</translation>
    </message>
    <message>
        <source>dry-out time</source>
        <translation>tiempo de secado</translation>
    </message>
    <message>
        <source>pump-off time of the wet start</source>
        <translation>bomba apagada del arranque en mojado</translation>
    </message>
    <message>
        <source>return of the drip</source>
        <translation>regreso del goteo</translation>
    </message>
    <message>
        <source>smallest step of the timer</source>
        <translation>paso mínimo del temporizador</translation>
    </message>
    <message>
        <source>enough water for %1 at the hottest hour</source>
        <translation>agua suficiente para %1 en la hora más calurosa</translation>
    </message>
    <message>
        <source>Filling the header of %1 takes %2. The rest of the run gives its pad what evaporates in %3 at the hottest hour, with a margin and the uncertainty of the readings on top.</source>
        <translation>Llenar el distribuidor de %1 toma %2. El resto del encendido da a su panel lo que se evapora en %3 en la hora más calurosa, más un margen y la incertidumbre de las lecturas.</translation>
    </message>
    <message>
        <source>%1 How much of the water evaporates is taken from the measured flow and the air: that is more than the stopwatch gives.</source>
        <translation>%1 La parte del agua que se evapora se toma del caudal medido y del aire: es más de lo que da el cronómetro.</translation>
    </message>
    <message>
        <source>water margin</source>
        <translation>margen de agua</translation>
    </message>
    <message>
        <source>period</source>
        <translation>periodo</translation>
    </message>
    <message>
        <source>share of the water that evaporates, test, by the measured flow</source>
        <translation>parte del agua que se evapora, prueba, según el caudal medido</translation>
    </message>
    <message>
        <source>share of the water that evaporates, test</source>
        <translation>parte del agua que se evapora, prueba</translation>
    </message>
    <message>
        <source>water at the far end over the weakest outlet&apos;s, in kappa already</source>
        <translation>agua en el extremo lejano contra la del orificio más débil, ya incluida en kappa</translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation>incertidumbre</translation>
    </message>
    <message>
        <source>no part of the pad dries between two runs</source>
        <translation>ninguna parte del panel se seca entre dos encendidos</translation>
    </message>
    <message>
        <source>From stop until water is back at the far end of %1, its pad gets nothing. At the hottest hour that may last %2, so the pump runs for the rest of the %3.</source>
        <translation>Desde el paro hasta que el agua vuelve al extremo lejano de %1, su panel no recibe nada. En la hora más calurosa eso puede durar %2, así que la bomba trabaja el resto del periodo de %3.</translation>
    </message>
    <message>
        <source>share of the dry-out time that a gap may take</source>
        <translation>parte del tiempo de secado que puede durar una pausa</translation>
    </message>
    <message>
        <source>water reaches the far end</source>
        <translation>el agua llega al extremo lejano</translation>
    </message>
    <message>
        <source>Next to nothing evaporates, so the run only has to fill the header of %1.</source>
        <translation>No se evapora casi nada, así que el encendido solo tiene que llenar el distribuidor de %1.</translation>
    </message>
    <message>
        <source>shortest rest</source>
        <translation>descanso más corto</translation>
    </message>
    <message>
        <source>the shortest period that leaves a rest of %1</source>
        <translation>el periodo más corto que deja un descanso de %1</translation>
    </message>
    <message>
        <source>Periods are tried from short to long; %1 is the first in which the pump can rest for at least %2 while every part of the pad stays wet.</source>
        <translation>Los periodos se prueban de corto a largo; %1 es el primero en que la bomba puede descansar al menos %2 mientras todas las partes del panel quedan mojadas.</translation>
    </message>
    <message>
        <source>period tried</source>
        <translation>periodo probado</translation>
    </message>
    <message>
        <source>base on-time</source>
        <translation>encendido base</translation>
    </message>
    <message>
        <source>the base already keeps the pad wet</source>
        <translation>el encendido base ya mantiene mojado el panel</translation>
    </message>
    <message>
        <source>The base on-time keeps every part wet at the hottest hour. A longer run would pump more water and cool no better, so there is nothing to trim up to.</source>
        <translation>El encendido base mantiene mojadas todas las partes en la hora más calurosa. Un encendido más largo bombearía más agua sin enfriar mejor, así que no hay hasta dónde corregir.</translation>
    </message>
    <message>
        <source>as long as wetting a dry pad takes</source>
        <translation>lo que tarda en mojarse un panel seco</translation>
    </message>
    <message>
        <source>No run needs to be longer than the slowest wet-through time. Trimming above the base changes how much is pumped, not how much is cooled.</source>
        <translation>Ningún encendido necesita durar más que el tiempo de mojado completo más lento. Corregir por encima del encendido base cambia cuánto se bombea, no cuánto se enfría.</translation>
    </message>
    <message>
        <source>longest wet-through time with its uncertainty</source>
        <translation>tiempo de mojado completo más largo con su incertidumbre</translation>
    </message>
    <message>
        <source>so that the pump still rests</source>
        <translation>para que la bomba todavía descanse</translation>
    </message>
    <message>
        <source>A longer run would leave less than %1 of rest. Trimming above the base changes how much is pumped, not how much is cooled.</source>
        <translation>Un encendido más largo dejaría menos de %1 de descanso. Corregir por encima del encendido base cambia cuánto se bombea, no cuánto se enfría.</translation>
    </message>
    <message>
        <source>on-time ceiling</source>
        <translation>tope de encendido</translation>
    </message>
    <message>
        <source>nothing to trim</source>
        <translation>nada que corregir</translation>
    </message>
    <message>
        <source>Base and ceiling are the same, so there is nothing to trim.</source>
        <translation>El encendido base y el tope son iguales, así que no hay nada que corregir.</translation>
    </message>
    <message>
        <source>four steps from base to ceiling</source>
        <translation>cuatro pasos del encendido base al tope</translation>
    </message>
    <message>
        <source>One row: when the house is warmer than the dead band allows, the on-time gains this much at a review, and four of them reach the ceiling.</source>
        <translation>Una fila: cuando la caseta está más caliente de lo que permite la banda muerta, el tiempo de encendido aumenta esto en cada revisión, y con cuatro llega al tope.</translation>
    </message>
    <message>
        <source>no change within %1 of target</source>
        <translation>sin cambio a menos de %1 del objetivo</translation>
    </message>
    <message>
        <source>Within %1 above or below target the on-time stays as it is, so that it does not chase every draught at the sensor.</source>
        <translation>Hasta %1 por encima o por debajo del objetivo, el tiempo de encendido queda como está, para que no persiga cada corriente de aire en el sensor.</translation>
    </message>
    <message>
        <source>dead band</source>
        <translation>banda muerta</translation>
    </message>
    <message>
        <source>time for the house to answer</source>
        <translation>tiempo para que responda la caseta</translation>
    </message>
    <message>
        <source>A change of on-time shows in the house only after about %1. The review is the first whole number of periods that is shorter neither than that nor than %2.</source>
        <translation>Un cambio del tiempo de encendido se nota en la caseta apenas después de unos %1. La revisión es el primer número entero de periodos que no es más corto que eso ni que %2.</translation>
    </message>
    <message>
        <source>time the house takes to answer</source>
        <translation>tiempo que tarda en responder la caseta</translation>
    </message>
    <message>
        <source>at the first call of the day</source>
        <translation>al primer pedido del día</translation>
    </message>
    <message>
        <source>Rinse at the first call inside pad hours, once the start temperature is reached and the tunnel fans run. Never on cold or young birds. Where the timer wants a clock time, take the start of pad hours.</source>
        <translation>Enjuague al primer pedido dentro del horario de los paneles, cuando se alcanzó la temperatura de arranque y los ventiladores de túnel trabajan. Nunca sobre aves frías o jóvenes. Donde el temporizador quiere una hora del reloj, tome el inicio del horario de los paneles.</translation>
    </message>
    <message>
        <source>Rinse at the first call inside pad hours, once the start temperature is reached and the tunnel fans run: on a mild day that is later, or never. Never on cold or young birds. Where the timer wants a clock time, take the start of pad hours, %1, and only in the hot season.</source>
        <translation>Enjuague al primer pedido dentro del horario de los paneles, cuando se alcanzó la temperatura de arranque y los ventiladores de túnel trabajan: en un día suave eso es más tarde, o nunca. Nunca sobre aves frías o jóvenes. Donde el temporizador quiere una hora del reloj, tome el inicio del horario de los paneles, %1, y solo en la temporada de calor.</translation>
    </message>
    <message>
        <source>wets a dry pad through and changes the header&apos;s water</source>
        <translation>moja por completo un panel seco y cambia el agua del distribuidor</translation>
    </message>
    <message>
        <source>With the fans on at the hottest hour a dry pad of %1 drips after %2; %3 more change the water in its header. Sump and make-up must carry it: watch the sump at the first rinse.</source>
        <translation>Con los ventiladores encendidos en la hora más calurosa, un panel seco de %1 gotea después de %2; %3 más cambian el agua de su distribuidor. El tanque y la reposición deben aguantarlo: vigile el tanque en el primer enjuague.</translation>
    </message>
    <message>
        <source>share of drying at constant rate</source>
        <translation>parte del secado a ritmo constante</translation>
    </message>
    <message>
        <source>wet-through with the fans on at the hottest hour</source>
        <translation>mojado completo con los ventiladores encendidos en la hora más calurosa</translation>
    </message>
    <message>
        <source>time to change the header&apos;s water</source>
        <translation>tiempo para cambiar el agua del distribuidor</translation>
    </message>
    <message>
        <source>wet-through was not timed from a dry pad</source>
        <translation>el mojado completo no se tomó desde un panel seco</translation>
    </message>
    <message>
        <source>%1 was timed from a wet pad, so nobody knows yet how long a dry one takes. Rinse by hand until its far end drips evenly, and time that.</source>
        <translation>En %1 el tiempo se tomó desde un panel mojado, así que nadie sabe todavía cuánto tarda uno seco. Enjuague a mano hasta que su extremo lejano gotee parejo, y tome ese tiempo.</translation>
    </message>
    <message>
        <source>the pump runs all the while it is called for</source>
        <translation>la bomba trabaja todo el tiempo que se pide</translation>
    </message>
    <message>
        <source>On-time and period are the same, so the pump does not rest while the pads are called for. No timer cools better than that.</source>
        <translation>El tiempo de encendido y el periodo son iguales, así que la bomba no descansa mientras se piden los paneles. Ningún temporizador enfría mejor que eso.</translation>
    </message>
    <message>
        <source>leave it off: the pump does not rest</source>
        <translation>déjelo apagado: la bomba no descansa</translation>
    </message>
    <message>
        <source>With the pump on all the while there is no run to trim and no dry pad to rinse.</source>
        <translation>Con la bomba encendida todo el tiempo no hay encendido que corregir ni panel seco que enjuagar.</translation>
    </message>
    <message>
        <source>this timer has no such setting</source>
        <translation>este temporizador no tiene ese ajuste</translation>
    </message>
    <message>
        <source>This timer runs the pump all the while the pads are called for. That is continuous pumping: there is nothing to set.</source>
        <translation>Este temporizador hace trabajar la bomba todo el tiempo que se piden los paneles. Eso es bombeo continuo: no hay nada que ajustar.</translation>
    </message>
    <message>
        <source>%1: at the hottest hour it needs %2 of pumping in %3 (%4 of it to fill the header), and %5 is the most that leaves a rest.</source>
        <translation>%1: en la hora más calurosa necesita %2 de bombeo en %3 (%4 de eso para llenar el distribuidor), y %5 es lo máximo que deja un descanso.</translation>
    </message>
    <message>
        <source>%1 The readings are too uncertain for any cycle: time them again.</source>
        <translation>%1 Las lecturas son demasiado inciertas para cualquier ciclo: tómelas otra vez.</translation>
    </message>
    <message>
        <source>%1 More flow (about %2 of what it gets now), a shorter bank on this pump (about %3 of its length) or a second feed would help.</source>
        <translation>%1 Ayudaría más caudal (cerca de %2 del que recibe ahora), un banco más corto en esta bomba (cerca de %3 de su largo) o una segunda alimentación.</translation>
    </message>
    <message>
        <source>%1: a rest of %2 and %3 to fill leave the far end without water for %4, and at the hottest hour it may go without for %5.</source>
        <translation>%1: un descanso de %2 y %3 para llenar dejan el extremo lejano sin agua por %4, y en la hora más calurosa puede estar sin ella por %5.</translation>
    </message>
    <message>
        <source>%1 Even a header that stays full leaves no room for a rest: let the pump run while the pads are called for.</source>
        <translation>%1 Ni un distribuidor que se mantiene lleno deja lugar para un descanso: deje trabajar la bomba mientras se piden los paneles.</translation>
    </message>
    <message>
        <source>%1 Filled within %2 it could rest. A header that stays full, a second feed or a shorter bank on this pump would help.</source>
        <translation>%1 Si se llenara en %2 podría descansar. Ayudaría un distribuidor que se mantenga lleno, una segunda alimentación o un banco más corto en esta bomba.</translation>
    </message>
    <message>
        <source>%1: at the hottest hour its pad dries faster than water comes, even with the pump always on. Give it more flow, more than %2 of what it gets now: clean outlets and strainer, a stronger pump, or a shorter bank on this pump.</source>
        <translation>%1: en la hora más calurosa su panel se seca más rápido de lo que llega el agua, incluso con la bomba siempre encendida. Dele más caudal, más de %2 del que recibe ahora: orificios y colador limpios, una bomba más potente o un banco más corto en esta bomba.</translation>
    </message>
    <message>
        <source>bank %1</source>
        <translation>banco %1</translation>
    </message>
    <message>
        <source>pump %1</source>
        <translation>bomba %1</translation>
    </message>
    <message>
        <source>timer %1</source>
        <translation>temporizador %1</translation>
    </message>
    <message>
        <source>%1, changed for this farm (the program&apos;s own: %2)</source>
        <translation>%1, cambiado para esta granja (el del programa: %2)</translation>
    </message>
    <message>
        <source>water margin %1</source>
        <translation>margen de agua %1</translation>
    </message>
    <message>
        <source>shortest rest %1</source>
        <translation>descanso más corto %1</translation>
    </message>
    <message>
        <source>share of the dry-out time that a gap may take %1</source>
        <translation>parte del tiempo de secado que puede durar una pausa %1</translation>
    </message>
    <message>
        <source>share of drying at constant rate %1</source>
        <translation>parte del secado a ritmo constante %1</translation>
    </message>
    <message>
        <source>periods tried: %1</source>
        <translation>periodos probados: %1</translation>
    </message>
    <message>
        <source>time the house takes to answer %1</source>
        <translation>tiempo que tarda en responder la caseta %1</translation>
    </message>
    <message>
        <source>trim dead band %1</source>
        <translation>banda muerta %1</translation>
    </message>
    <message>
        <source>start temperature with older birds %1</source>
        <translation>temperatura de arranque con aves mayores %1</translation>
    </message>
    <message>
        <source>start temperature %1</source>
        <translation>temperatura de arranque %1</translation>
    </message>
    <message>
        <source>older birds: from %1 days on</source>
        <translation>aves mayores: desde %1 días</translation>
    </message>
    <message>
        <source>air down the house before pads are used: at least %1</source>
        <translation>aire a lo largo de la caseta antes de usar los paneles: al menos %1</translation>
    </message>
    <message>
        <source>least cooling that is worth the damp %1</source>
        <translation>enfriamiento mínimo que justifica la humedad %1</translation>
    </message>
    <message>
        <source>outside temperature from which no humidity stops the pads %1</source>
        <translation>temperatura exterior desde la que ninguna humedad detiene los paneles %1</translation>
    </message>
    <message>
        <source>smallest step of a humidity %1</source>
        <translation>paso mínimo de una humedad %1</translation>
    </message>
    <message>
        <source>pads are to be dry by %1</source>
        <translation>los paneles deben estar secos a las %1</translation>
    </message>
    <message>
        <source>a pad counts as dry with %1 of its face wet</source>
        <translation>un panel cuenta como seco con %1 de su cara mojada</translation>
    </message>
    <message>
        <source>a pad not dry %1 after its last run does not dry that night</source>
        <translation>un panel que no está seco %1 después de su último encendido no se seca esa noche</translation>
    </message>
    <message>
        <source>clock ahead of the sun by %1 (summer time, longitude)</source>
        <translation>reloj adelantado al sol %1 (horario de verano, longitud)</translation>
    </message>
    <message>
        <source>smallest step of a time of day %1</source>
        <translation>paso mínimo de una hora del día %1</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, luego %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Ending earlier would leave birds without pads while it is hot outside, so the hours are not shortened.</source>
        <translation>Terminar más temprano dejaría a las aves sin paneles mientras hace calor afuera, así que el horario no se acorta.</translation>
    </message>
    <message>
        <source>How long the pads take to dry is not known, as not every bank was timed until its first dry patch: the hours end by the weather alone.</source>
        <translation>No se sabe cuánto tardan los paneles en secarse, porque no a todos los bancos se les tomó el tiempo hasta la primera mancha seca: el horario termina solo según el clima.</translation>
    </message>
    <message>
        <source>On the design day the pads will not dry that night: the slowest is still wet %1 later. %2</source>
        <translation>En el día de diseño los paneles no se secarán esa noche: el más lento sigue mojado %1 después. %2</translation>
    </message>
    <message>
        <source>With the fans on, the slowest pad is dry at %1, later than the %2 that would be good. %3</source>
        <translation>Con los ventiladores encendidos, el panel más lento está seco a las %1, más tarde que las %2 que convendrían. %3</translation>
    </message>
    <message>
        <source>With the fans on, the slowest pad is dry at %1, before the night (%2): one dry-down a day.</source>
        <translation>Con los ventiladores encendidos, el panel más lento está seco a las %1, antes de la noche (%2): un secado al día.</translation>
    </message>
    <message>
        <source>design day: hottest outside</source>
        <translation>día de diseño: lo más caluroso afuera</translation>
    </message>
    <message>
        <source>design day: wet bulb at that hour</source>
        <translation>día de diseño: bulbo húmedo a esa hora</translation>
    </message>
    <message>
        <source>design day: warmest minus coolest</source>
        <translation>día de diseño: máxima menos mínima</translation>
    </message>
    <message>
        <source>clock ahead of the sun</source>
        <translation>reloj adelantado al sol</translation>
    </message>
    <message>
        <source>from then on pads help on the design day</source>
        <translation>desde entonces los paneles ayudan en el día de diseño</translation>
    </message>
    <message>
        <source>On the design day it is at or above the start temperature, %1, outside from %2 on, and the pads cool by at least %3.</source>
        <translation>En el día de diseño, desde las %2 hay afuera la temperatura de arranque, %1, o más, y los paneles enfrían al menos %3.</translation>
    </message>
    <message>
        <source>pads dry by</source>
        <translation>paneles secos a las</translation>
    </message>
    <message>
        <source>time until the slowest pad is dry, fans on</source>
        <translation>tiempo hasta que el panel más lento esté seco, ventiladores encendidos</translation>
    </message>
    <message>
        <source>cooler outside than the start temperature</source>
        <translation>afuera más fresco que la temperatura de arranque</translation>
    </message>
    <message>
        <source>On the design day it is cooler outside than the start temperature, %1, from %2 on.</source>
        <translation>En el día de diseño, desde las %2 afuera está más fresco que la temperatura de arranque, %1.</translation>
    </message>
    <message>
        <source>too damp outside for pads to cool</source>
        <translation>afuera demasiado húmedo para que los paneles enfríen</translation>
    </message>
    <message>
        <source>On the design day the air gets too damp: from %2 on pads cool by less than %1.</source>
        <translation>En el día de diseño el aire se pone demasiado húmedo: desde las %2 los paneles enfrían menos de %1.</translation>
    </message>
    <message>
        <source>not hot enough on the design day</source>
        <translation>el día de diseño no es bastante caluroso</translation>
    </message>
    <message>
        <source>Even at the hottest hour of the design day it is cooler outside than the start temperature, %1: check the design day, or leave the hours open and let the start temperature decide.</source>
        <translation>Incluso en la hora más calurosa del día de diseño, afuera está más fresco que la temperatura de arranque, %1: revise el día de diseño, o deje abierto el horario y que decida la temperatura de arranque.</translation>
    </message>
    <message>
        <source>too damp on the design day</source>
        <translation>demasiado húmedo en el día de diseño</translation>
    </message>
    <message>
        <source>Even at the hottest hour of the design day pads cool by less than %1: the air is too damp. Check the design day.</source>
        <translation>Incluso en la hora más calurosa del día de diseño los paneles enfrían menos de %1: el aire está demasiado húmedo. Revise el día de diseño.</translation>
    </message>
    <message>
        <source>no start temperature is advised</source>
        <translation>no se recomienda temperatura de arranque</translation>
    </message>
    <message>
        <source>Pad hours are the hours in which it is hotter than the start temperature, and for birds of this age none is advised.</source>
        <translation>El horario de los paneles son las horas en que hace más calor que la temperatura de arranque, y para aves de esta edad no se recomienda ninguna.</translation>
    </message>
    <message>
        <source>no pads are described</source>
        <translation>no hay paneles descritos</translation>
    </message>
    <message>
        <source>the farm&apos;s design day is missing</source>
        <translation>falta el día de diseño de la granja</translation>
    </message>
    <message>
        <source>Pad hours come from the farm&apos;s design day: enter its temperature, the wet bulb at that hour and the daily range.</source>
        <translation>El horario de los paneles sale del día de diseño de la granja: ingrese su temperatura, el bulbo húmedo a esa hora y la variación diaria.</translation>
    </message>
    <message>
        <source>the design day&apos;s range is missing</source>
        <translation>falta la variación del día de diseño</translation>
    </message>
    <message>
        <source>How hot the other hours of the design day are follows from its daily range, warmest minus coolest: enter it with the farm.</source>
        <translation>Cuánto calor hace en las otras horas del día de diseño sale de su variación diaria, máxima menos mínima: ingrésela con la granja.</translation>
    </message>
    <message>
        <source>the design day cannot be used</source>
        <translation>el día de diseño no se puede usar</translation>
    </message>
    <message>
        <source>The farm&apos;s design day cannot be used as it was entered; what is wrong with it stands with what is missing.</source>
        <translation>El día de diseño de la granja no se puede usar como se ingresó; lo que está mal se dice junto a lo que falta.</translation>
    </message>
    <message>
        <source>on the design day the air holds as much water all day</source>
        <translation>en el día de diseño el aire lleva la misma cantidad de agua todo el día</translation>
    </message>
    <message>
        <source>cannot be worked out</source>
        <translation>no se puede calcular</translation>
    </message>
    <message>
        <source>Pad hours cannot be worked out: %1.</source>
        <translation>El horario de los paneles no se puede calcular: %1.</translation>
    </message>
    <message>
        <source>leave them open: pads help day and night</source>
        <translation>déjelo abierto: los paneles ayudan de día y de noche</translation>
    </message>
    <message>
        <source>On the design day it is at or above the start temperature, %1, outside day and night: no hour may keep the pads off. They will not dry between the days.</source>
        <translation>En el día de diseño hay afuera, de día y de noche, la temperatura de arranque, %1, o más: ninguna hora puede dejar apagados los paneles. No se secarán entre un día y otro.</translation>
    </message>
    <message>
        <source>After a day as hot as the design day these pads stay wet all night: dry them out on the first cooler evening.</source>
        <translation>Después de un día tan caluroso como el de diseño, estos paneles quedan mojados toda la noche: séquelos al anochecer del primer día más fresco.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Not done: no run of the pump was watched.</source>
        <translation>No hecho: no se observó ningún encendido de la bomba.</translation>
    </message>
    <message>
        <source>Not judged: the settings left were changed after this was watched. Watch again, from run number %1 after the change.</source>
        <translation>No evaluado: los ajustes dejados se cambiaron después de esta observación. Observe otra vez, desde el encendido número %1 después del cambio.</translation>
    </message>
    <message>
        <source>Not judged: how many runs went by since the last change was not entered; the first that counts is number %1.</source>
        <translation>No evaluado: no se ingresó cuántos encendidos pasaron desde el último cambio; el primero que cuenta es el número %1.</translation>
    </message>
    <message>
        <source>Not judged yet: too early after the change of a setting. The first run that counts is number %1.</source>
        <translation>Todavía no evaluado: demasiado pronto después de cambiar un ajuste. El primer encendido que cuenta es el número %1.</translation>
    </message>
    <message>
        <source>Failed: %1.</source>
        <translation>No aprobado: %1.</translation>
    </message>
    <message>
        <source>Too close to call: %1. Watch another cycle.</source>
        <translation>Muy justo para decidir: %1. Observe otro ciclo.</translation>
    </message>
    <message>
        <source>Not complete: nothing failed, but this is missing: %1.</source>
        <translation>Incompleto: nada falló, pero falta esto: %1.</translation>
    </message>
    <message>
        <source>Passed: the far end drips evenly and no part of the face is dry.</source>
        <translation>Aprobado: el extremo lejano gotea parejo y ninguna parte de la cara está seca.</translation>
    </message>
    <message>
        <source>Passed: the pads run as set. Runs that count: %1.</source>
        <translation>Aprobado: los paneles trabajan como se ajustó. Encendidos que cuentan: %1.</translation>
    </message>
    <message>
        <source>the fill time of every bank, as this controller counts from a full header</source>
        <translation>el tiempo de llenado de cada banco, porque este controlador cuenta desde el distribuidor lleno</translation>
    </message>
    <message>
        <source>%1 as left in the timer</source>
        <translation>%1 como se dejó en el temporizador</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>aprobado</translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation>muy justo para decidir</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>no aprobado</translation>
    </message>
    <message>
        <source>not watched</source>
        <translation>no observado</translation>
    </message>
    <message>
        <source>nothing to compare with</source>
        <translation>nada con que comparar</translation>
    </message>
    <message>
        <source>too early</source>
        <translation>demasiado pronto</translation>
    </message>
    <message>
        <source>not complete</source>
        <translation>incompleto</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Periodo</translation>
    </message>
    <message>
        <source>On-time</source>
        <translation>Encendido</translation>
    </message>
    <message>
        <source>Water at the far end</source>
        <translation>Agua en el extremo lejano</translation>
    </message>
    <message>
        <source>Drip is back</source>
        <translation>Volvió el goteo</translation>
    </message>
    <message>
        <source>Drip before the stop</source>
        <translation>Goteo antes del paro</translation>
    </message>
    <message>
        <source>Even drip at the far end</source>
        <translation>Goteo parejo en el extremo lejano</translation>
    </message>
    <message>
        <source>Dry patch on the face</source>
        <translation>Mancha seca en la cara</translation>
    </message>
    <message>
        <source>Pass: what was seen, with its uncertainty U (95 %) on both sides, lies within what is expected and its tolerance. Fail: it lies wholly outside. Else too close to call. Runs before the third after a change are not judged; an uneven drip or a dry patch fails.</source>
        <translation>Aprobado: lo visto, con su incertidumbre U (95&#xa0;%) a ambos lados, queda dentro de lo esperado y su tolerancia. No aprobado: queda fuera por completo. Si no: muy justo para decidir. Los encendidos antes del tercero después de un cambio no se evalúan; un goteo disparejo o una mancha seca no se aprueba.</translation>
    </message>
    <message>
        <source>A start in between was not marked: what was seen is a whole number of periods.</source>
        <translation>No se marcó un arranque intermedio: lo visto es un número entero de periodos.</translation>
    </message>
    <message>
        <source>Take that mark back and watch one more period from start to start.</source>
        <translation>Quite esa marca y observe un periodo más, de arranque a arranque.</translation>
    </message>
    <message>
        <source>The controller takes what was entered as the period for the time between two runs.</source>
        <translation>El controlador toma lo que se ingresó como periodo por el tiempo entre dos encendidos.</translation>
    </message>
    <message>
        <source>Look up what its setting means; if it is the rest, enter period minus on-time.</source>
        <translation>Averigüe qué significa su ajuste; si es el descanso, ingrese el periodo menos el tiempo de encendido.</translation>
    </message>
    <message>
        <source>Another period stands in the controller than on the sheet.</source>
        <translation>En el controlador hay otro periodo que en la hoja.</translation>
    </message>
    <message>
        <source>Read the setting back on the controller, with its unit, and see that it was stored.</source>
        <translation>Lea otra vez el ajuste en el controlador, con su unidad, y vea que se haya guardado.</translation>
    </message>
    <message>
        <source>The controller counts the on-time from a full header: the run is longer by the fill time.</source>
        <translation>El controlador cuenta el tiempo de encendido desde el distribuidor lleno: el encendido es más largo por el tiempo de llenado.</translation>
    </message>
    <message>
        <source>Look up where its count starts; if so, take the fill time off what is entered.</source>
        <translation>Averigüe desde dónde cuenta; si es así, reste el tiempo de llenado a lo que se ingresa.</translation>
    </message>
    <message>
        <source>The on-time was entered as counted from a full header, but the controller counts from the start: the run is shorter by the fill time.</source>
        <translation>El tiempo de encendido se ingresó como contado desde el distribuidor lleno, pero el controlador cuenta desde el arranque: el encendido es más corto por el tiempo de llenado.</translation>
    </message>
    <message>
        <source>Look up where its count starts; if so, add the fill time to what is entered.</source>
        <translation>Averigüe desde dónde cuenta; si es así, sume el tiempo de llenado a lo que se ingresa.</translation>
    </message>
    <message>
        <source>Another on-time stands in the controller than on the sheet.</source>
        <translation>En el controlador hay otro tiempo de encendido que en la hoja.</translation>
    </message>
    <message>
        <source>A review has trimmed the on-time already.</source>
        <translation>Una revisión ya corrigió el tiempo de encendido.</translation>
    </message>
    <message>
        <source>Read the on-time that the controller shows now and enter it as the shown on-time.</source>
        <translation>Lea el tiempo de encendido que el controlador muestra ahora e ingréselo como encendido mostrado.</translation>
    </message>
    <message>
        <source>The pump starts late or drops out: relay, contactor or overload.</source>
        <translation>La bomba arranca tarde o se corta: relé, contactor o relé de sobrecarga.</translation>
    </message>
    <message>
        <source>Stand at the pump when the controller switches: is its output on and the pump still? Relay, contactor and wiring are for a licensed electrician.</source>
        <translation>Párese junto a la bomba cuando el controlador la enciende o apaga: ¿está activada su salida y la bomba quieta? Relé, contactor y cableado son para un electricista con licencia.</translation>
    </message>
    <message>
        <source>The pump runs on after the controller has switched off: a contactor that sticks, or a hand switch.</source>
        <translation>La bomba sigue trabajando después de que el controlador la apagó: un contactor que se pega, o un interruptor manual.</translation>
    </message>
    <message>
        <source>Look at the hand switch first; contactor and wiring are for a licensed electrician.</source>
        <translation>Vea primero el interruptor manual; contactor y cableado son para un electricista con licencia.</translation>
    </message>
    <message>
        <source>Something else switched the pump: start temperature, lowest house temperature, humidity cut-off or pad hours.</source>
        <translation>Otra cosa encendió o apagó la bomba: temperatura de arranque, temperatura mínima de la caseta, corte por humedad u horario de los paneles.</translation>
    </message>
    <message>
        <source>Read house temperature, humidity and clock on the controller while you watch.</source>
        <translation>Lea en el controlador la temperatura de la caseta, la humedad y el reloj mientras observa.</translation>
    </message>
    <message>
        <source>The pump loses its water while it rests: a check or foot valve that leaks, or air on the suction side.</source>
        <translation>La bomba pierde su agua mientras descansa: una válvula de retención o de pie que fuga, o aire en el lado de succión.</translation>
    </message>
    <message>
        <source>Listen at the start for a pump that runs dry, and watch the first outlets: spitting means air.</source>
        <translation>Escuche en el arranque si la bomba trabaja en seco, y observe los primeros orificios: si escupen, hay aire.</translation>
    </message>
    <message>
        <source>Less flow than when it was timed: strainer, filter or a valve that is not fully open.</source>
        <translation>Menos caudal que cuando se tomaron los tiempos: colador, filtro o una válvula que no está abierta del todo.</translation>
    </message>
    <message>
        <source>Clean strainer and filter, look at every handle, then time the fill again.</source>
        <translation>Limpie colador y filtro, revise cada manija y tome otra vez el tiempo de llenado.</translation>
    </message>
    <message>
        <source>Clogged outlets.</source>
        <translation>Orificios tapados.</translation>
    </message>
    <message>
        <source>Look along the face from the side with the pump running, trace each dry streak up to its outlets, and flush the header.</source>
        <translation>Mire a lo largo de la cara, desde un lado y con la bomba trabajando; siga cada franja seca hacia arriba hasta sus orificios, y lave el distribuidor.</translation>
    </message>
    <message>
        <source>Water is led astray between header and pad, or the header does not hang level.</source>
        <translation>El agua se desvía entre el distribuidor y el panel, o el distribuidor no está a nivel.</translation>
    </message>
    <message>
        <source>Look under the header&apos;s cover above the dry patch, and along it with a level.</source>
        <translation>Mire bajo la tapa del distribuidor encima de la mancha seca, y a lo largo de él con un nivel.</translation>
    </message>
    <message>
        <source>The pads were not wet through when the cycle began.</source>
        <translation>Los paneles no estaban mojados por completo cuando empezó el ciclo.</translation>
    </message>
    <message>
        <source>Run the pump until the far end drips evenly, let three cycles pass, then watch again.</source>
        <translation>Haga trabajar la bomba hasta que el extremo lejano gotee parejo, deje pasar tres ciclos y observe otra vez.</translation>
    </message>
    <message>
        <source>The air is drier now than when the pads were timed.</source>
        <translation>El aire está ahora más seco que cuando se tomaron los tiempos de los paneles.</translation>
    </message>
    <message>
        <source>Measure outside temperature and humidity again and enter them.</source>
        <translation>Mida otra vez la temperatura y la humedad exteriores, e ingréselas.</translation>
    </message>
    <message>
        <source>The on-time is too short for these pads.</source>
        <translation>El tiempo de encendido es demasiado corto para estos paneles.</translation>
    </message>
    <message>
        <source>Time the water again, work out new settings and prove those.</source>
        <translation>Tome otra vez los tiempos del agua, calcule nuevos ajustes y pruébelos.</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>ingresado</translation>
    </message>
    <message>
        <source>assumed, can be changed</source>
        <translation>supuesto, se puede cambiar</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>calculado</translation>
    </message>
    <message>
        <source>Rounded up from %1.</source>
        <translation>Redondeado hacia arriba desde %1.</translation>
    </message>
    <message>
        <source>Rounded down from %1.</source>
        <translation>Redondeado hacia abajo desde %1.</translation>
    </message>
    <message>
        <source>Rounded from %1 to the nearest step.</source>
        <translation>Redondeado desde %1 al paso más cercano.</translation>
    </message>
    <message>
        <source>It would have to be %1; this controller holds %2 to %3.</source>
        <translation>Tendría que ser %1; este controlador admite de %2 a %3.</translation>
    </message>
    <message>
        <source>Moved from %1 into what this controller holds.</source>
        <translation>Movido desde %1 a lo que este controlador admite.</translation>
    </message>
    <message>
        <source>This row is not used: no change.</source>
        <translation>Esta fila no se usa: sin cambio.</translation>
    </message>
    <message>
        <source>This row is not used, but it cannot be set to no change.</source>
        <translation>Esta fila no se usa, pero no se puede poner en sin cambio.</translation>
    </message>
    <message>
        <source>This on-time counts from a full header, and no fill time is known: the number counts from pump start.</source>
        <translation>Este tiempo de encendido cuenta desde el distribuidor lleno, y no se conoce el tiempo de llenado: el número cuenta desde el arranque de la bomba.</translation>
    </message>
    <message>
        <source>%1 from pump start, less %2 for filling the header.</source>
        <translation>%1 desde el arranque de la bomba, menos %2 para llenar el distribuidor.</translation>
    </message>
    <message>
        <source>As long as the period of %1, so that the pump runs without rest.</source>
        <translation>Tan largo como el periodo de %1, para que la bomba trabaje sin descanso.</translation>
    </message>
    <message>
        <source>A period of %1 needs a run of %2.</source>
        <translation>Un periodo de %1 necesita un encendido de %2.</translation>
    </message>
    <message>
        <source>Not below the base on-time of %1.</source>
        <translation>No menos que el encendido base de %1.</translation>
    </message>
    <message>
        <source>The next multiple of the period from %1 up.</source>
        <translation>El siguiente múltiplo del periodo, de %1 hacia arriba.</translation>
    </message>
    <message>
        <source>This controller has no setting for: %1 (%2).</source>
        <translation>Este controlador no tiene ajuste para: %1 (%2).</translation>
    </message>
    <message>
        <source>%1 trim rows are wanted; this controller has %2.</source>
        <translation>Se quieren %1 filas de corrección; este controlador tiene %2.</translation>
    </message>
    <message>
        <source>Too short: in a period of %1 the pads need a run of %2.</source>
        <translation>Demasiado corto: en un periodo de %1 los paneles necesitan un encendido de %2.</translation>
    </message>
    <message>
        <source>Leaves the pump less than %1 of rest in a period of %2.</source>
        <translation>Deja a la bomba menos de %1 de descanso en un periodo de %2.</translation>
    </message>
    <message>
        <source>Above the band for a start temperature, which ends at %1.</source>
        <translation>Por encima de la banda para una temperatura de arranque, que termina en %1.</translation>
    </message>
    <message>
        <source>Above the start temperature of %1, which could then never start the pads.</source>
        <translation>Por encima de la temperatura de arranque de %1, que entonces nunca podría arrancar los paneles.</translation>
    </message>
    <message>
        <source>This controller demands more degrees than in the row before, %1.</source>
        <translation>Este controlador exige más grados que en la fila anterior, %1.</translation>
    </message>
    <message>
        <source>This controller demands a ceiling not below the base on-time.</source>
        <translation>Este controlador exige un tope que no sea menor que el encendido base.</translation>
    </message>
    <message>
        <source>This controller demands a ceiling below the period: it cannot run without rest.</source>
        <translation>Este controlador exige un tope menor que el periodo: no puede trabajar sin descanso.</translation>
    </message>
    <message>
        <source>This controller demands a base on-time below the period: it cannot run without rest.</source>
        <translation>Este controlador exige un encendido base menor que el periodo: no puede trabajar sin descanso.</translation>
    </message>
    <message>
        <source>This controller demands a multiple of the period, and holds none that is long enough.</source>
        <translation>Este controlador exige un múltiplo del periodo, y no admite ninguno bastante largo.</translation>
    </message>
    <message>
        <source>This controller demands pad hours that end on the day on which they begin.</source>
        <translation>Este controlador exige un horario de los paneles que termine el mismo día en que empieza.</translation>
    </message>
    <message>
        <source>Not used: %1</source>
        <translation>No se usa: %1</translation>
    </message>
    <message>
        <source>discharge coefficient of an outlet %1</source>
        <translation>coeficiente de descarga de un orificio %1</translation>
    </message>
    <message>
        <source>a level header</source>
        <translation>un distribuidor a nivel</translation>
    </message>
    <message>
        <source>The sump&apos;s drawdown is not used: its water surface is not entered.</source>
        <translation>El descenso del nivel del tanque no se usa: no se ingresó su superficie de agua.</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>según lo medido</translation>
    </message>
    <message>
        <source>by sump drawdown</source>
        <translation>por descenso del tanque</translation>
    </message>
    <message>
        <source>by meter</source>
        <translation>por medidor</translation>
    </message>
    <message>
        <source>by catches at outlets</source>
        <translation>por captación en los orificios</translation>
    </message>
    <message>
        <source>by bucket</source>
        <translation>por cubeta</translation>
    </message>
    <message>
        <source>worked out from the head at the header</source>
        <translation>calculado de la carga en el distribuidor</translation>
    </message>
    <message>
        <source>worked out from the pump curve</source>
        <translation>calculado de la curva de la bomba</translation>
    </message>
    <message>
        <source>Not usable: %1</source>
        <translation>No se puede usar: %1</translation>
    </message>
    <message>
        <source>air pressure %1 (sea level)</source>
        <translation>presión del aire %1 (nivel del mar)</translation>
    </message>
    <message>
        <source>most water evaporates at the hottest hour of the design day</source>
        <translation>la mayor evaporación es en la hora más calurosa del día de diseño</translation>
    </message>
    <message>
        <source>outside temperature at the readings</source>
        <translation>temperatura exterior en las lecturas</translation>
    </message>
    <message>
        <source>outside humidity at the readings</source>
        <translation>humedad exterior en las lecturas</translation>
    </message>
    <message>
        <source>the farm&apos;s design temperature</source>
        <translation>la temperatura de diseño de la granja</translation>
    </message>
    <message>
        <source>the wet bulb at the farm&apos;s design temperature</source>
        <translation>el bulbo húmedo a la temperatura de diseño de la granja</translation>
    </message>
    <message>
        <source>start temperature</source>
        <translation>temperatura de arranque</translation>
    </message>
    <message>
        <source>how far the best pad cools towards the wet bulb</source>
        <translation>hasta dónde enfría el mejor panel hacia el bulbo húmedo</translation>
    </message>
    <message>
        <source>least cooling that is worth the damp</source>
        <translation>enfriamiento mínimo que justifica la humedad</translation>
    </message>
    <message>
        <source>for birds from %1 days on, with all tunnel fans on</source>
        <translation>para aves de %1 días o más, con todos los ventiladores de túnel encendidos</translation>
    </message>
    <message>
        <source>Older birds of this farm are to get pads from %1 to %2 on, as somebody chose; published are the low to mid 80s °F</source>
        <translation>Las aves mayores de esta granja deben tener paneles desde %1 a %2, como alguien eligió; lo publicado son los 80 y tantos °F, parte baja a media</translation>
    </message>
    <message>
        <source>Older birds need pads from the low to mid 80s °F, %1 to %2</source>
        <translation>Las aves mayores necesitan paneles desde los 80 y tantos °F, parte baja a media, %1 a %2</translation>
    </message>
    <message>
        <source>%1: below that, moving air does it and pads only make the house damp. Start them only with all tunnel fans on and at least %2 of air down the house.</source>
        <translation>%1: por debajo de eso basta el aire en movimiento, y los paneles solo humedecen la caseta. Arránquelos solo con todos los ventiladores de túnel encendidos y al menos %2 de aire a lo largo de la caseta.</translation>
    </message>
    <message>
        <source>coolest start with older birds</source>
        <translation>arranque más fresco con aves mayores</translation>
    </message>
    <message>
        <source>warmest start with older birds</source>
        <translation>arranque más caliente con aves mayores</translation>
    </message>
    <message>
        <source>least air speed down the house</source>
        <translation>velocidad mínima del aire a lo largo de la caseta</translation>
    </message>
    <message>
        <source>air speed down the house, fans over cross-section</source>
        <translation>velocidad del aire a lo largo de la caseta, ventiladores entre sección transversal</translation>
    </message>
    <message>
        <source>young birds: pads off but against heat</source>
        <translation>aves jóvenes: paneles apagados, salvo contra el calor</translation>
    </message>
    <message>
        <source>The birds are %1 days old. What is published holds for older ones, here from %2 days on: young birds are chilled by wet, moving air. Leave the pads off but against heat, and ask the grower from which house temperature that is.</source>
        <translation>Las aves tienen %1 días. Lo publicado vale para las mayores, aquí desde %2 días: el aire húmedo en movimiento enfría demasiado a las aves jóvenes. Deje los paneles apagados, salvo contra el calor, y pregunte al granjero desde qué temperatura de la caseta es eso.</translation>
    </message>
    <message>
        <source>the grower&apos;s own limit, below the start</source>
        <translation>el límite del granjero, por debajo del arranque</translation>
    </message>
    <message>
        <source>A hard limit apart from the start temperature: strictly below it the pads are off, whatever else calls for them. No number for it is published, so none is advised: agree on it with the grower. It has to lie below the start temperature.</source>
        <translation>Un límite firme aparte de la temperatura de arranque: estrictamente por debajo de él los paneles están apagados, pida quien pida. No hay número publicado para él, así que no se recomienda ninguno: acuérdelo con el granjero. Debe quedar por debajo de la temperatura de arranque.</translation>
    </message>
    <message>
        <source>above it pads cool by less than %1 at the start temperature</source>
        <translation>por encima, los paneles enfrían menos de %1 a la temperatura de arranque</translation>
    </message>
    <message>
        <source>With more than %1 outside, pads as good as these cool air of %2 by less than %3: the house gets damp for next to nothing. In hotter air they cool more at the same humidity: from %4 outside no humidity may stop them.</source>
        <translation>Con más de %1 afuera, paneles tan buenos como estos enfrían aire de %2 en menos de %3: la caseta se humedece por casi nada. En aire más caliente enfrían más con la misma humedad: desde %4 afuera ninguna humedad puede detenerlos.</translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation>presión del aire</translation>
    </message>
    <message>
        <source>none: the sensor hangs in the house</source>
        <translation>ninguno: el sensor cuelga en la caseta</translation>
    </message>
    <message>
        <source>The humidity sensor hangs in the house or behind the pads, where the pads make the air damp themselves: a cut-off would shut them off while they work. Leave it off, or hang the sensor outside.</source>
        <translation>El sensor de humedad cuelga en la caseta o detrás de los paneles, donde los paneles mismos humedecen el aire: un corte los apagaría mientras trabajan. Déjelo apagado, o cuelgue el sensor afuera.</translation>
    </message>
    <message>
        <source>where does the humidity sensor hang?</source>
        <translation>¿dónde cuelga el sensor de humedad?</translation>
    </message>
    <message>
        <source>No humidity sensor is described. A cut-off serves only where the sensor hangs outside: describe it with the house. Without one, leave the cut-off off.</source>
        <translation>No hay sensor de humedad descrito. Un corte solo sirve donde el sensor cuelga afuera: descríbalo con la caseta. Sin sensor, deje apagado el corte.</translation>
    </message>
    <message>
        <source>A cut-off is worked out at the start temperature, and for birds of this age none is advised.</source>
        <translation>El corte se calcula a la temperatura de arranque, y para aves de esta edad no se recomienda ninguna.</translation>
    </message>
    <message>
        <source>At the start temperature these pads cool by less than %1 in any air, or what was entered cannot be used (%2).</source>
        <translation>A la temperatura de arranque estos paneles enfrían menos de %1 con cualquier aire, o lo ingresado no se puede usar (%2).</translation>
    </message>
    <message>
        <source>which sensor does it read?</source>
        <translation>¿qué sensor lee?</translation>
    </message>
    <message>
        <source>Humidity is sensed outside and in the house. Where this timer reads the sensor outside, %1 is the cut-off; where it reads the other, leave it off, as the pads would shut themselves off.</source>
        <translation>La humedad se mide afuera y en la caseta. Donde este temporizador lee el sensor de afuera, el corte es %1; donde lee el otro, déjelo apagado, porque los paneles se apagarían solos.</translation>
    </message>
    <message>
        <source>The age of the birds is not entered: the start temperature holds from %1 days on, and younger birds need another.</source>
        <translation>La edad de las aves no está ingresada: la temperatura de arranque vale desde %1 días, y las aves más jóvenes necesitan otra.</translation>
    </message>
    <message>
        <source>Air speed down the house is not known: enter the fans&apos; airflow and the cross-section. Pads want at least %1.</source>
        <translation>No se conoce la velocidad del aire a lo largo de la caseta: ingrese el caudal de aire de los ventiladores y la sección transversal. Los paneles piden al menos %1.</translation>
    </message>
    <message>
        <source>Air goes down the house at %1: pads want at least %2. Bring the fans up first.</source>
        <translation>El aire recorre la caseta a %1: los paneles piden al menos %2. Suba primero la ventilación.</translation>
    </message>
    <message>
        <source>The lowest house temperature is set to %1, not below the start temperature advised, %2: lower it, or it decides when pads start.</source>
        <translation>La temperatura mínima de la caseta está en %1, no por debajo de la temperatura de arranque recomendada, %2: bájela, o es ella la que decide cuándo arrancan los paneles.</translation>
    </message>
    <message>
        <source>This timer has no pad hours: let what calls for these pads do so between %1 and %2 only.</source>
        <translation>Este temporizador no tiene horario de los paneles: que lo que pide estos paneles lo haga solo entre las %1 y las %2.</translation>
    </message>
    <message>
        <source>This timer has no start temperature and no pad hours: let what calls for these pads do so from %1 on in the house, with all tunnel fans on, and between %2 and %3.</source>
        <translation>Este temporizador no tiene temperatura de arranque ni horario de los paneles: que lo que pide estos paneles lo haga desde %1 en la caseta, con todos los ventiladores de túnel encendidos, y entre las %2 y las %3.</translation>
    </message>
    <message>
        <source>This timer has no start temperature: let what calls for these pads do so from %1 on in the house, with all tunnel fans on.</source>
        <translation>Este temporizador no tiene temperatura de arranque: que lo que pide estos paneles lo haga desde %1 en la caseta, con todos los ventiladores de túnel encendidos.</translation>
    </message>
    <message>
        <source>Farm</source>
        <translation>Granja</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Service firm</source>
        <translation>Empresa de servicio</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Sets the air pressure; without it, sea level is assumed.</source>
        <translation>Fija la presión del aire; sin ella se supone el nivel del mar.</translation>
    </message>
    <message>
        <source>Design day: hottest outside</source>
        <translation>Día de diseño: máxima afuera</translation>
    </message>
    <message>
        <source>The day that the settings must carry; without it no cycle is advised.</source>
        <translation>El día que los ajustes deben aguantar; sin él no se recomienda ningún ciclo.</translation>
    </message>
    <message>
        <source>Design day: wet bulb at that hour</source>
        <translation>Día de diseño: bulbo húmedo a esa hora</translation>
    </message>
    <message>
        <source>How much a pad evaporates then; without it no cycle is advised.</source>
        <translation>Cuánto evapora entonces un panel; sin él no se recomienda ningún ciclo.</translation>
    </message>
    <message>
        <source>Design day: warmest minus coolest</source>
        <translation>Día de diseño: máxima menos mínima</translation>
    </message>
    <message>
        <source>For the hours in which pads help.</source>
        <translation>Para las horas en que los paneles ayudan.</translation>
    </message>
    <message>
        <source>Margins and limits</source>
        <translation>Márgenes y límites</translation>
    </message>
    <message>
        <source>At a flow of</source>
        <translation>Con un caudal de</translation>
    </message>
    <message>
        <source>A point of the pump&apos;s curve; without a curve, the measured flow is used.</source>
        <translation>Un punto de la curva de la bomba; sin curva se usa el caudal medido.</translation>
    </message>
    <message>
        <source>it lifts</source>
        <translation>eleva</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Sump volume</source>
        <translation>Volumen del tanque</translation>
    </message>
    <message>
        <source>Must hold what drains back at a stop.</source>
        <translation>Debe recibir lo que regresa en un paro.</translation>
    </message>
    <message>
        <source>Water surface of the sump</source>
        <translation>Superficie de agua del tanque</translation>
    </message>
    <message>
        <source>Turns a fall of the level into a flow, and what drains back into a rise.</source>
        <translation>Convierte el descenso del nivel en caudal, y lo que regresa en subida.</translation>
    </message>
    <message>
        <source>Sump: working level to overflow</source>
        <translation>Tanque: del nivel de trabajo al rebose</translation>
    </message>
    <message>
        <source>What drains back at a stop must fit; without it, that is not checked.</source>
        <translation>Lo que regresa en un paro debe caber; sin esto, no se revisa.</translation>
    </message>
    <message>
        <source>Make-up flow</source>
        <translation>Caudal de reposición</translation>
    </message>
    <message>
        <source>Must carry what evaporates.</source>
        <translation>Debe aguantar lo que se evapora.</translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation>Purga</translation>
    </message>
    <message>
        <source>Carries salts away; without it, what would be needed is shown.</source>
        <translation>Se lleva las sales; sin ella se muestra la que haría falta.</translation>
    </message>
    <message>
        <source>Riser volume</source>
        <translation>Volumen del tubo de subida</translation>
    </message>
    <message>
        <source>Filled before the header; without it, from the supply pipe, or none is assumed.</source>
        <translation>Se llena antes que el distribuidor; sin él, se toma del tubo de alimentación, o se supone nulo.</translation>
    </message>
    <message>
        <source>Supply pipe: length</source>
        <translation>Tubo de alimentación: largo</translation>
    </message>
    <message>
        <source>From pump to header; for the riser&apos;s volume and its loss.</source>
        <translation>De la bomba al distribuidor; para el volumen del tubo de subida y su pérdida.</translation>
    </message>
    <message>
        <source>Supply pipe: bore</source>
        <translation>Tubo de alimentación: diámetro</translation>
    </message>
    <message>
        <source>For the same.</source>
        <translation>Para lo mismo.</translation>
    </message>
    <message>
        <source>Header above the sump&apos;s water</source>
        <translation>Distribuidor sobre el agua del tanque</translation>
    </message>
    <message>
        <source>What the pump lifts before anything flows; with its curve.</source>
        <translation>Lo que la bomba eleva antes de que fluya algo; con su curva.</translation>
    </message>
    <message>
        <source>Pump curve</source>
        <translation>Curva de la bomba</translation>
    </message>
    <message>
        <source>Other outlets from</source>
        <translation>Otros orificios desde</translation>
    </message>
    <message>
        <source>Seen from the pump end.</source>
        <translation>Visto desde el extremo de la bomba.</translation>
    </message>
    <message>
        <source>bore there</source>
        <translation>diámetro ahí</translation>
    </message>
    <message>
        <source>Bank</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Alimentado por</translation>
    </message>
    <message>
        <source>End with the pump</source>
        <translation>Extremo con la bomba</translation>
    </message>
    <message>
        <source>Pad length</source>
        <translation>Largo del panel</translation>
    </message>
    <message>
        <source>Shares the pump&apos;s flow; without it, no flow per length.</source>
        <translation>Reparte el caudal de la bomba; sin él no hay caudal por largo.</translation>
    </message>
    <message>
        <source>Pad height</source>
        <translation>Altura del panel</translation>
    </message>
    <message>
        <source>Water evaporated down the pad.</source>
        <translation>Agua evaporada panel abajo.</translation>
    </message>
    <message>
        <source>Pad thickness</source>
        <translation>Espesor del panel</translation>
    </message>
    <message>
        <source>For the expected cooling.</source>
        <translation>Para el enfriamiento esperado.</translation>
    </message>
    <message>
        <source>Header bore</source>
        <translation>Diámetro del tubo</translation>
    </message>
    <message>
        <source>Pipe volume, for the fill time to expect and the rinse; without it, three fill times are rinsed.</source>
        <translation>Volumen del tubo, para el tiempo de llenado que se espera y el enjuague; sin él se enjuagan tres tiempos de llenado.</translation>
    </message>
    <message>
        <source>Outlet bore</source>
        <translation>Diámetro del orificio</translation>
    </message>
    <message>
        <source>Which outlet gets least; without it, all are assumed to give the same.</source>
        <translation>Qué orificio recibe menos; sin él se supone que todos dan lo mismo.</translation>
    </message>
    <message>
        <source>Outlet spacing</source>
        <translation>Separación de orificios</translation>
    </message>
    <message>
        <source>Other outlets</source>
        <translation>Otros orificios</translation>
    </message>
    <message>
        <source>Discharge coefficient of an outlet</source>
        <translation>Coeficiente de descarga de un orificio</translation>
    </message>
    <message>
        <source>Without it, 0.6 is assumed, a drilled hole.</source>
        <translation>Sin él se supone 0.6, un agujero taladrado.</translation>
    </message>
    <message>
        <source>Share of the outlets&apos; area that is clogged</source>
        <translation>Parte del área de los orificios que está tapada</translation>
    </message>
    <message>
        <source>Counted as lost evenly; without it, none is assumed.</source>
        <translation>Se cuenta como pérdida pareja; sin ella se supone nula.</translation>
    </message>
    <message>
        <source>Far end of the header above its pump end</source>
        <translation>Extremo lejano del distribuidor sobre el de la bomba</translation>
    </message>
    <message>
        <source>A level decides where water goes first; without it, the header is assumed to be level.</source>
        <translation>Un desnivel decide a dónde va primero el agua; sin él se supone el distribuidor a nivel.</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Temporizador</translation>
    </message>
    <message>
        <source>Kind of timer</source>
        <translation>Tipo de temporizador</translation>
    </message>
    <message>
        <source>Switches</source>
        <translation>Acciona</translation>
    </message>
    <message>
        <source>Smallest step of an on-time</source>
        <translation>Paso mínimo del encendido</translation>
    </message>
    <message>
        <source>Advice is rounded to it; without it, 1 s is assumed.</source>
        <translation>La recomendación se redondea a él; sin él se supone 1 s.</translation>
    </message>
    <message>
        <source>Smallest step of a period</source>
        <translation>Paso mínimo del periodo</translation>
    </message>
    <message>
        <source>Without it, any period is assumed to be possible.</source>
        <translation>Sin él se supone que cualquier periodo es posible.</translation>
    </message>
    <message>
        <source>Setting template</source>
        <translation>Plantilla de ajustes</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Sensor</translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation>Cuelga</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Caseta</translation>
    </message>
    <message>
        <source>Airflow of the fans that run with the pads</source>
        <translation>Caudal de aire de los ventiladores que trabajan con los paneles</translation>
    </message>
    <message>
        <source>For the water evaporated and the air speed.</source>
        <translation>Para el agua evaporada y la velocidad del aire.</translation>
    </message>
    <message>
        <source>Cross-section of the house</source>
        <translation>Sección transversal de la caseta</translation>
    </message>
    <message>
        <source>For the air speed over the birds; without it, that is not checked.</source>
        <translation>Para la velocidad del aire sobre las aves; sin ella, no se revisa.</translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation>Bombas</translation>
    </message>
    <message>
        <source>Pad banks</source>
        <translation>Bancos</translation>
    </message>
    <message>
        <source>Timers</source>
        <translation>Temporizadores</translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation>Sensores</translation>
    </message>
    <message>
        <source>Above target</source>
        <translation>Sobre el objetivo</translation>
    </message>
    <message>
        <source>On-time changes by</source>
        <translation>El encendido cambia en</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>Start temperature</source>
        <translation>Temperatura de arranque</translation>
    </message>
    <message>
        <source>Lowest house temperature</source>
        <translation>Temperatura mínima de la caseta</translation>
    </message>
    <message>
        <source>Humidity cut-off</source>
        <translation>Corte por humedad</translation>
    </message>
    <message>
        <source>Pad hours from</source>
        <translation>Horario desde</translation>
    </message>
    <message>
        <source>Pad hours to</source>
        <translation>Horario hasta</translation>
    </message>
    <message>
        <source>Base on-time</source>
        <translation>Encendido base</translation>
    </message>
    <message>
        <source>On-time ceiling</source>
        <translation>Tope de encendido</translation>
    </message>
    <message>
        <source>Trim rows</source>
        <translation>Filas de corrección</translation>
    </message>
    <message>
        <source>Review interval</source>
        <translation>Intervalo de revisión</translation>
    </message>
    <message>
        <source>Rinse time</source>
        <translation>Hora del enjuague</translation>
    </message>
    <message>
        <source>Rinse length</source>
        <translation>Duración del enjuague</translation>
    </message>
    <message>
        <source>Entered fill</source>
        <translation>Llenado ingresado</translation>
    </message>
    <message>
        <source>Entered wet-through</source>
        <translation>Mojado ingresado</translation>
    </message>
    <message>
        <source>Shown on-time</source>
        <translation>Encendido mostrado</translation>
    </message>
    <message>
        <source>Pump meant to run without rest</source>
        <translation>La bomba debe trabajar sin descanso</translation>
    </message>
    <message>
        <source>Why it differs from the advice</source>
        <translation>Por qué difiere de lo recomendado</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Función</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrumento</translation>
    </message>
    <message>
        <source>Last checked</source>
        <translation>Última revisión</translation>
    </message>
    <message>
        <source>Longest time the pads may be off</source>
        <translation>Tiempo máximo con los paneles apagados</translation>
    </message>
    <message>
        <source>Agreed with the grower before any pump is stopped; it counts down on every page.</source>
        <translation>Acordado con el granjero antes de parar cualquier bomba; la cuenta regresiva está en todas las páginas.</translation>
    </message>
    <message>
        <source>House temperature at which the test stops</source>
        <translation>Temperatura de la caseta a la que se detiene la prueba</translation>
    </message>
    <message>
        <source>Agreed with the grower before any pump is stopped.</source>
        <translation>Acordada con el granjero antes de parar cualquier bomba.</translation>
    </message>
    <message>
        <source>Agreed with</source>
        <translation>Acordado con</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Measured flow</source>
        <translation>Caudal medido</translation>
    </message>
    <message>
        <source>By sump drawdown with the make-up shut, or by meter. Checks the stopwatch; a second opinion.</source>
        <translation>Por descenso del nivel del tanque con la reposición cerrada, o por medidor. Comprueba el cronómetro; una segunda opinión.</translation>
    </message>
    <message>
        <source>Sump drawdown: fall of the level</source>
        <translation>Descenso del tanque: baja del nivel</translation>
    </message>
    <message>
        <source>Make-up shut, from the pump&apos;s start and only until water comes back from the pads. The surest way to a pump&apos;s flow; needs the sump&apos;s water surface.</source>
        <translation>Reposición cerrada, desde el arranque de la bomba y solo hasta que vuelva agua de los paneles. La manera más segura de saber el caudal de una bomba; necesita la superficie de agua del tanque.</translation>
    </message>
    <message>
        <source>Sump drawdown: time</source>
        <translation>Descenso del tanque: tiempo</translation>
    </message>
    <message>
        <source>By meter: volume</source>
        <translation>Por medidor: volumen</translation>
    </message>
    <message>
        <source>By meter: time</source>
        <translation>Por medidor: tiempo</translation>
    </message>
    <message>
        <source>By bucket under the whole flow: volume</source>
        <translation>Por cubeta bajo todo el caudal: volumen</translation>
    </message>
    <message>
        <source>Quick, but sure to 5 % only.</source>
        <translation>Rápido, pero seguro solo al 5&#xa0;%.</translation>
    </message>
    <message>
        <source>By bucket: time to fill</source>
        <translation>Por cubeta: tiempo en llenar</translation>
    </message>
    <message>
        <source>Lost by leaks and drift</source>
        <translation>Pérdida por fugas y arrastre</translation>
    </message>
    <message>
        <source>Carries salts away as bleed does; without it, none is assumed.</source>
        <translation>Se lleva sales como la purga; sin esto se supone nula.</translation>
    </message>
    <message>
        <source>Air speed at the pad face</source>
        <translation>Velocidad del aire en la cara del panel</translation>
    </message>
    <message>
        <source>At least five points along the pad; the speed changes a lot from one to the next.</source>
        <translation>Al menos cinco puntos a lo largo del panel; la velocidad cambia mucho de uno a otro.</translation>
    </message>
    <message>
        <source>Outlet caught at</source>
        <translation>Orificio captado en</translation>
    </message>
    <message>
        <source>From the pump end. Catch 30 to 60 s at each.</source>
        <translation>Desde el extremo de la bomba. Capte de 30 a 60 s en cada uno.</translation>
    </message>
    <message>
        <source>volume caught</source>
        <translation>volumen captado</translation>
    </message>
    <message>
        <source>time to fill</source>
        <translation>tiempo en llenar</translation>
    </message>
    <message>
        <source>Temperature behind this pad</source>
        <translation>Temperatura detrás de este panel</translation>
    </message>
    <message>
        <source>One bank against another; without it, the one for all banks counts.</source>
        <translation>Un banco contra otro; sin ella vale la de todos los bancos.</translation>
    </message>
    <message>
        <source>Pressure drop through this pad</source>
        <translation>Caída de presión en este panel</translation>
    </message>
    <message>
        <source>From outside to just behind it; rises as a pad clogs.</source>
        <translation>De afuera a justo detrás de él; sube cuando un panel se tapa.</translation>
    </message>
    <message>
        <source>Head of water at the header&apos;s inlet</source>
        <translation>Carga de agua en la entrada del distribuidor</translation>
    </message>
    <message>
        <source>Where no flow was measured, the header&apos;s flow is worked out from it.</source>
        <translation>Donde no se midió caudal, de ella se calcula el del distribuidor.</translation>
    </message>
    <message>
        <source>Water caught at outlets</source>
        <translation>Agua captada en los orificios</translation>
    </message>
    <message>
        <source>Outside temperature</source>
        <translation>Temperatura exterior</translation>
    </message>
    <message>
        <source>Today&apos;s weather against the design day; without it no cycle is advised.</source>
        <translation>El clima de hoy contra el día de diseño; sin ella no se recomienda ningún ciclo.</translation>
    </message>
    <message>
        <source>Outside relative humidity</source>
        <translation>Humedad relativa exterior</translation>
    </message>
    <message>
        <source>Outside wet bulb</source>
        <translation>Bulbo húmedo exterior</translation>
    </message>
    <message>
        <source>In place of the humidity; counts only where that is not entered.</source>
        <translation>En lugar de la humedad; cuenta solo donde esa no está ingresada.</translation>
    </message>
    <message>
        <source>Outside dew point</source>
        <translation>Punto de rocío exterior</translation>
    </message>
    <message>
        <source>In place of the humidity; counts only where neither that nor the wet bulb is entered.</source>
        <translation>En lugar de la humedad; cuenta solo donde no está ingresada ella ni el bulbo húmedo.</translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation>Barómetro</translation>
    </message>
    <message>
        <source>Station pressure; without it, from the farm&apos;s elevation.</source>
        <translation>Presión del lugar; sin ella, de la altitud de la granja.</translation>
    </message>
    <message>
        <source>Temperature behind the pad</source>
        <translation>Temperatura detrás del panel</translation>
    </message>
    <message>
        <source>Measures how well the pad cools; without it, the published value for new pads or 75 % is assumed.</source>
        <translation>Mide qué tan bien enfría el panel; sin ella se supone el valor publicado para paneles nuevos o 75&#xa0;%.</translation>
    </message>
    <message>
        <source>House temperature</source>
        <translation>Temperatura de la caseta</translation>
    </message>
    <message>
        <source>House relative humidity</source>
        <translation>Humedad relativa de la caseta</translation>
    </message>
    <message>
        <source>Static pressure</source>
        <translation>Presión estática</translation>
    </message>
    <message>
        <source>Compared with earlier visits.</source>
        <translation>Se compara con visitas anteriores.</translation>
    </message>
    <message>
        <source>Mean of at least five points; for the expected cooling.</source>
        <translation>Promedio de al menos cinco puntos; para el enfriamiento esperado.</translation>
    </message>
    <message>
        <source>Thermometer good to</source>
        <translation>Exactitud del termómetro</translation>
    </message>
    <message>
        <source>For how sure the measured cooling is; without it, 0.5 °C (0.9 °F) is assumed.</source>
        <translation>Para cuán seguro es el enfriamiento medido; sin esto se supone 0.5 °C (0.9 °F).</translation>
    </message>
    <message>
        <source>Hygrometer good to</source>
        <translation>Exactitud del higrómetro</translation>
    </message>
    <message>
        <source>For how sure the measured cooling is; without it, 3 % is assumed.</source>
        <translation>Para cuán seguro es el enfriamiento medido; sin esto se supone 3&#xa0;%.</translation>
    </message>
    <message>
        <source>Age of the birds in days</source>
        <translation>Edad de las aves en días</translation>
    </message>
    <message>
        <source>Hardness as CaCO3</source>
        <translation>Dureza como CaCO3</translation>
    </message>
    <message>
        <source>Calcium hardness as CaCO3</source>
        <translation>Dureza cálcica como CaCO3</translation>
    </message>
    <message>
        <source>For the scaling indices; without it, the whole hardness is assumed to be calcium.</source>
        <translation>Para los índices de sarro; sin ella se supone que toda la dureza es calcio.</translation>
    </message>
    <message>
        <source>Alkalinity as CaCO3</source>
        <translation>Alcalinidad como CaCO3</translation>
    </message>
    <message>
        <source>For the scaling indices.</source>
        <translation>Para los índices de sarro.</translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation>Sólidos disueltos</translation>
    </message>
    <message>
        <source>For the scaling indices; without it, from the conductivity.</source>
        <translation>Para los índices de sarro; sin ellos, de la conductividad.</translation>
    </message>
    <message>
        <source>pH of the make-up water</source>
        <translation>pH del agua de reposición</translation>
    </message>
    <message>
        <source>Conductivity of the make-up water</source>
        <translation>Conductividad del agua de reposición</translation>
    </message>
    <message>
        <source>With the sump&apos;s: how far salts have gathered.</source>
        <translation>Con la del tanque: cuánto se han juntado las sales.</translation>
    </message>
    <message>
        <source>pH of the sump</source>
        <translation>pH del tanque</translation>
    </message>
    <message>
        <source>Rises as salts gather; without it, the indices are those of the make-up water.</source>
        <translation>Sube cuando se juntan sales; sin él, los índices son los del agua de reposición.</translation>
    </message>
    <message>
        <source>Conductivity of the sump</source>
        <translation>Conductividad del tanque</translation>
    </message>
    <message>
        <source>With that of the make-up water: how far salts have gathered.</source>
        <translation>Con la del agua de reposición: cuánto se han juntado las sales.</translation>
    </message>
    <message>
        <source>Temperature of the sump</source>
        <translation>Temperatura del tanque</translation>
    </message>
    <message>
        <source>For the scaling indices; without it, 25 °C (77 °F) is assumed.</source>
        <translation>Para los índices de sarro; sin ella se suponen 25 °C (77 °F).</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Razón</translation>
    </message>
    <message>
        <source>The far end drips evenly before the pump stops</source>
        <translation>El extremo lejano gotea parejo antes de que pare la bomba</translation>
    </message>
    <message>
        <source>A dry patch somewhere on the face</source>
        <translation>Una mancha seca en algún lugar de la cara</translation>
    </message>
    <message>
        <source>First run watched, counted from the last change</source>
        <translation>Primer encendido observado, contado desde el último cambio</translation>
    </message>
    <message>
        <source>1: the first run after a setting was changed. Runs before the third are not judged: the pads need them to settle.</source>
        <translation>1: el primer encendido después de cambiar un ajuste. Los encendidos antes del tercero no se evalúan: los paneles los necesitan para estabilizarse.</translation>
    </message>
    <message>
        <source>Persons</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instrumentos</translation>
    </message>
    <message>
        <source>Settings found</source>
        <translation>Ajustes encontrados</translation>
    </message>
    <message>
        <source>Settings left</source>
        <translation>Ajustes dejados</translation>
    </message>
    <message>
        <source>Proof run</source>
        <translation>Corrida de prueba</translation>
    </message>
    <message>
        <source>Open points</source>
        <translation>Puntos pendientes</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>As the controller writes it.</source>
        <translation>Como la escribe el controlador.</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>s, min or h; degC or degF; %. Left out for a time of day, whose numbers are minutes after midnight.</source>
        <translation>s, min o h; degC o degF; %. Se omite en una hora del día, cuyos números son minutos después de la medianoche.</translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation>Paso mínimo</translation>
    </message>
    <message>
        <source>In that unit.</source>
        <translation>En esa unidad.</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mínimo</translation>
    </message>
    <message>
        <source>In that unit; steps count from it.</source>
        <translation>En esa unidad; los pasos se cuentan desde él.</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Máximo</translation>
    </message>
    <message>
        <source>Its on-time counts from</source>
        <translation>Su encendido cuenta desde</translation>
    </message>
    <message>
        <source>How many it has.</source>
        <translation>Cuántas tiene.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>In the order in which the controller asks.</source>
        <translation>En el orden en que el controlador los pide.</translation>
    </message>
    <message>
        <source>What it demands between settings</source>
        <translation>Lo que exige entre ajustes</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Desperdicio</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Falla</translation>
    </message>
    <message>
        <source>Harm</source>
        <translation>Daño</translation>
    </message>
    <message>
        <source>Coolest start with older birds</source>
        <translation>Arranque más fresco con aves mayores</translation>
    </message>
    <message>
        <source>Below it, moving air does it and pads only make the house damp.</source>
        <translation>Por debajo basta el aire en movimiento, y los paneles solo humedecen la caseta.</translation>
    </message>
    <message>
        <source>Warmest start with older birds</source>
        <translation>Arranque más caliente con aves mayores</translation>
    </message>
    <message>
        <source>By then they need pads.</source>
        <translation>A más tardar ahí necesitan paneles.</translation>
    </message>
    <message>
        <source>Start temperature to advise</source>
        <translation>Temperatura de arranque a recomendar</translation>
    </message>
    <message>
        <source>Between the coolest and the warmest start.</source>
        <translation>Entre el arranque más fresco y el más caliente.</translation>
    </message>
    <message>
        <source>Older birds: from that age on, in days</source>
        <translation>Aves mayores: desde esa edad, en días</translation>
    </message>
    <message>
        <source>Breeds differ; younger birds are chilled by wet, moving air.</source>
        <translation>Las líneas difieren; el aire húmedo en movimiento enfría demasiado a las aves más jóvenes.</translation>
    </message>
    <message>
        <source>Air down the house before pads are used</source>
        <translation>Aire a lo largo de la caseta antes de usar los paneles</translation>
    </message>
    <message>
        <source>Moving air comes first; pads add to it.</source>
        <translation>Primero va el aire en movimiento; los paneles se le suman.</translation>
    </message>
    <message>
        <source>Least cooling that is worth the damp</source>
        <translation>Enfriamiento mínimo que justifica la humedad</translation>
    </message>
    <message>
        <source>Sets the humidity cut-off and ends the pad hours.</source>
        <translation>Fija el corte por humedad y termina el horario de los paneles.</translation>
    </message>
    <message>
        <source>Hot outside: no humidity stops pads from there on</source>
        <translation>Calor afuera: desde ahí ninguna humedad detiene los paneles</translation>
    </message>
    <message>
        <source>Not below the start temperature.</source>
        <translation>No por debajo de la temperatura de arranque.</translation>
    </message>
    <message>
        <source>Smallest step of a humidity</source>
        <translation>Paso mínimo de una humedad</translation>
    </message>
    <message>
        <source>The cut-off is rounded down to it.</source>
        <translation>El corte se redondea hacia abajo a él.</translation>
    </message>
    <message>
        <source>Pads dry by</source>
        <translation>Paneles secos a las</translation>
    </message>
    <message>
        <source>A time of day after noon.</source>
        <translation>Una hora del día después del mediodía.</translation>
    </message>
    <message>
        <source>A pad counts as dry with that much of its face wet</source>
        <translation>Un panel cuenta como seco con esta parte de su cara mojada</translation>
    </message>
    <message>
        <source>For how long pads stay wet after their last run.</source>
        <translation>Para cuánto tiempo quedan mojados los paneles después de su último encendido.</translation>
    </message>
    <message>
        <source>Longest time until a pad is dry</source>
        <translation>Tiempo máximo hasta que un panel está seco</translation>
    </message>
    <message>
        <source>A pad that takes longer does not dry that night.</source>
        <translation>Un panel que tarda más no se seca esa noche.</translation>
    </message>
    <message>
        <source>Clock ahead of the sun</source>
        <translation>Reloj adelantado al sol</translation>
    </message>
    <message>
        <source>By summer time and by where in its time zone the farm lies; pad hours go by it.</source>
        <translation>Por el horario de verano y por el lugar de la granja en su zona horaria; el horario de los paneles se rige por él.</translation>
    </message>
    <message>
        <source>Smallest step of a time of day</source>
        <translation>Paso mínimo de una hora del día</translation>
    </message>
    <message>
        <source>Pad hours are rounded outward to it.</source>
        <translation>El horario de los paneles se redondea hacia afuera a él.</translation>
    </message>
    <message>
        <source>Water margin</source>
        <translation>Margen de agua</translation>
    </message>
    <message>
        <source>Water in a run over what evaporates in a period at the hottest hour.</source>
        <translation>Agua de un encendido dividida entre la que se evapora en un periodo en la hora más calurosa.</translation>
    </message>
    <message>
        <source>Shortest rest</source>
        <translation>Descanso más corto</translation>
    </message>
    <message>
        <source>Where pads leave less time than this, the pump runs without rest. Ask what its motor stands.</source>
        <translation>Donde los paneles dejan menos tiempo que este, la bomba trabaja sin descanso. Pregunte qué aguanta su motor.</translation>
    </message>
    <message>
        <source>Share of the dry-out time that a gap may take</source>
        <translation>Parte del tiempo de secado que puede durar una pausa</translation>
    </message>
    <message>
        <source>How long the far end may go without water between two runs.</source>
        <translation>Cuánto puede estar sin agua el extremo lejano entre dos encendidos.</translation>
    </message>
    <message>
        <source>Share of drying at constant rate</source>
        <translation>Parte del secado a ritmo constante</translation>
    </message>
    <message>
        <source>How a pad dries: for the rinse, for dry-down, and whether water keeps up.</source>
        <translation>Cómo se seca un panel: para el enjuague, para el secado diario y para saber si alcanza el agua.</translation>
    </message>
    <message>
        <source>Period tried first</source>
        <translation>Periodo que se prueba primero</translation>
    </message>
    <message>
        <source>Period tried next</source>
        <translation>Periodo que se prueba después</translation>
    </message>
    <message>
        <source>Where the first leaves no rest; not shorter than the first.</source>
        <translation>Donde el primero no deja descanso; no más corto que el primero.</translation>
    </message>
    <message>
        <source>Time the house takes to answer</source>
        <translation>Tiempo que tarda en responder la caseta</translation>
    </message>
    <message>
        <source>A review comes no sooner than a change of on-time shows in the house.</source>
        <translation>Una revisión no llega antes de que un cambio del tiempo de encendido se note en la caseta.</translation>
    </message>
    <message>
        <source>Trim dead band</source>
        <translation>Banda muerta</translation>
    </message>
    <message>
        <source>Within it the on-time stays as it is.</source>
        <translation>Dentro de ella el tiempo de encendido queda como está.</translation>
    </message>
    <message>
        <source>Trim row: change of on-time</source>
        <translation>Fila de corrección: cambio del encendido</translation>
    </message>
    <message>
        <source>Trim row: degrees above target</source>
        <translation>Fila de corrección: grados sobre el objetivo</translation>
    </message>
    <message>
        <source>When pads may run</source>
        <translation>Cuándo trabajan los paneles</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tiempo</translation>
    </message>
    <message>
        <source>How it adapts</source>
        <translation>Cómo se adapta</translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation>Enjuague</translation>
    </message>
    <message>
        <source>DANGER</source>
        <translation>PELIGRO</translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation>ADVERTENCIA</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>PRECAUCIÓN</translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation>AVISO</translation>
    </message>
    <message>
        <source>The other bank was not bone dry at its start, or drips before it is wet.</source>
        <translation>El otro banco no estaba totalmente seco al arrancar, o gotea antes de estar mojado.</translation>
    </message>
    <message>
        <source>Dry both to the core, look for dry paper between wet streaks, and time both again.</source>
        <translation>Seque los dos hasta el centro, busque papel seco entre las franjas mojadas y tome los dos tiempos otra vez.</translation>
    </message>
    <message>
        <source>Once its header is full, %1 takes %2 to drip, %3 on the same pump only %4. The slower bank sets the on-time of both.</source>
        <translation>Con su distribuidor lleno, %1 tarda %2 en gotear, y %3, en la misma bomba, solo %4. El banco más lento fija el tiempo de encendido de los dos.</translation>
    </message>
    <message>
        <source>Find the cause, likeliest first, then time both banks again.</source>
        <translation>Busque la causa, la más probable primero; luego tome otra vez los tiempos de los dos bancos.</translation>
    </message>
    <message>
        <source>Water takes %1 to the far end of %2, but %3 to that of %4, which has the same header on the same pump: every run pumps %5 longer for it.</source>
        <translation>El agua tarda %1 en llegar al extremo lejano de %2, pero %3 al de %4, que tiene el mismo distribuidor en la misma bomba: por eso cada encendido bombea %5 más.</translation>
    </message>
    <message>
        <source>%1 gets %2 of pad, %3 less than the %4 of %5: it wets later and is rinsed less, and one timer for both has to serve it.</source>
        <translation>%1 recibe %2 de panel, %3 menos que los %4 de %5: se moja más tarde y se enjuaga menos, y un solo temporizador tiene que servir a los dos.</translation>
    </message>
    <message>
        <source>Find the cause, likeliest first, then measure both flows again.</source>
        <translation>Busque la causa, la más probable primero; luego mida otra vez los dos caudales.</translation>
    </message>
    <message>
        <source>Until it drips, %1 takes up water for %2 of its pad&apos;s volume, %3 for %4 of its own: it drips before it is wet, or was not dry, and its wetting time is then up to %5 too short.</source>
        <translation>Hasta que gotea, %1 toma agua por %2 del volumen de su panel, y %3 por %4 del suyo: gotea antes de estar mojado, o no estaba seco, y su tiempo de mojado es entonces hasta %5 demasiado corto.</translation>
    </message>
    <message>
        <source>Look for dry paper between wet streaks; if there is none, dry both banks to the core and time them again.</source>
        <translation>Busque papel seco entre las franjas mojadas; si no lo hay, seque los dos bancos hasta el centro y tome los tiempos otra vez.</translation>
    </message>
    <message>
        <source>%1 gives %2 of the possible cooling, %3 gives %4: air behind the worse one is %5 warmer for it %6.</source>
        <translation>%1 da %2 del enfriamiento posible, %3 da %4: por eso el aire detrás del peor está %5 más caliente %6.</translation>
    </message>
    <message>
        <source>Find the cause, likeliest first; read both banks with one thermometer.</source>
        <translation>Busque la causa, la más probable primero; lea los dos bancos con un mismo termómetro.</translation>
    </message>
    <message>
        <source>A pump or fan that starts by itself: it crushes or cuts off hands. Before you reach in, know every source of energy, shut down, switch off at the isolating device, lock and tag it, let moving parts come to rest and pressure go, try to start it, then work. In the United States, 29 CFR 1910.147 asks this for a service firm&apos;s people; it does not cover farm employment, where 29 CFR 1928.57(a)(6) asks for instruction at first assignment and every year, and for everything stopped, at rest and its power locked out before maintenance.</source>
        <translation>Una bomba o un ventilador que arranca solo: aplasta o amputa manos. Antes de meter las manos, conozca todas las fuentes de energía, apague, desconecte en el dispositivo de aislamiento, póngale candado y etiqueta, deje que las piezas móviles se detengan y que se vaya la presión, intente arrancar el equipo, y solo entonces trabaje. En Estados Unidos, 29 CFR 1910.147 exige esto para el personal de una empresa de servicio; no cubre el empleo en la granja, donde 29 CFR 1928.57(a)(6) exige instrucción en la primera asignación y cada año, y que antes del mantenimiento todo esté parado, en reposo y con su energía bloqueada.</translation>
    </message>
    <message>
        <source>Electricity where everything is wet: a shock kills. Use receptacles with ground-fault protection, switch off at the isolating device before a cover comes off, and leave wiring to a licensed electrician. In the United States, NEC article 547 is for farm buildings; look into the edition adopted where you are.</source>
        <translation>Electricidad donde todo está mojado: una descarga mata. Use tomacorrientes con protección contra falla a tierra, desconecte en el dispositivo de aislamiento antes de quitar una tapa, y deje el cableado a un electricista con licencia. En Estados Unidos, el artículo 547 del NEC es para edificios agrícolas; consulte la edición adoptada donde usted está.</translation>
    </message>
    <message>
        <source>Bleach with acid or with ammonia: the gas that forms can kill. Descaling acid and bleach meet in this very job: never let them mix, drain and rinse between them, give air, wear gloves and eye protection.</source>
        <translation>Cloro (blanqueador) con ácido o con amoníaco: el gas que se forma puede matar. El ácido desincrustante y el cloro coinciden justo en este trabajo: nunca deje que se mezclen, vacíe y enjuague entre uno y otro, ventile, use guantes y protección para los ojos.</translation>
    </message>
    <message>
        <source>Fan blades behind a missing or open guard: deep cuts, lost fingers. Keep guards on while a fan can turn; blades lower than %1 need guards with openings of at most %2. Put no meter and no hand through a guard.</source>
        <translation>Aspas de ventilador detrás de una guarda que falta o está abierta: cortes profundos, dedos perdidos. Mantenga las guardas puestas mientras un ventilador pueda girar; las aspas a menos de %1 de altura necesitan guardas con aberturas de %2 como máximo. No meta ningún medidor ni la mano a través de una guarda.</translation>
    </message>
    <message>
        <source>A fall from a ladder at the header: broken bones, or death. Foot out one for every four up, rails %1 above the landing, face it, three points of contact, no metal ladder near live parts.</source>
        <translation>Una caída de escalera junto al distribuidor: huesos rotos, o la muerte. Separe el pie de la escalera una medida por cada cuatro de altura, deje los largueros %1 por encima del nivel de llegada, suba de frente a ella, tres puntos de contacto, nada de escaleras metálicas cerca de partes con corriente.</translation>
    </message>
    <message>
        <source>Work in the heat: heat stroke can kill. Drink water every %1 and rest in the shade; the risk is high from a heat index of %2, very high above %3. The first week is the worst.</source>
        <translation>Trabajo en el calor: el golpe de calor puede matar. Tome agua cada %1 y descanse a la sombra; el riesgo es alto desde un índice de calor de %2, muy alto por encima de %3. La primera semana es la peor.</translation>
    </message>
    <message>
        <source>Bacteria in warm recirculated water: breathed in as fine spray they can make you severely ill. Sludge, scale and algae feed them between %1 and %2. A running pad was measured to carry over very little, yet an untreated sump grows them within weeks; pressure washing, flushing the ends and cleaning the sump make spray. Keep the sump clean, stay out of the spray, wear breathing protection where you can&apos;t.</source>
        <translation>Bacterias en el agua tibia que recircula: respiradas como rocío fino pueden causarle una enfermedad grave. El lodo, el sarro y las algas las alimentan entre %1 y %2. Se midió que un panel trabajando arrastra muy poco, pero un tanque sin tratar las cría en semanas; lavar a presión, lavar los extremos y limpiar el tanque producen rocío. Mantenga limpio el tanque, quédese fuera del rocío, y use protección respiratoria donde no pueda.</translation>
    </message>
    <message>
        <source>Sump water drawn back into drinking water: it makes people and birds ill. Keep an air gap of at least twice the inlet&apos;s diameter and at least %1; a float valve with its outlet under water has none.</source>
        <translation>Agua del tanque succionada hacia el agua potable: enferma a personas y aves. Mantenga un espacio de aire de al menos dos veces el diámetro de la entrada y de al menos %1; una válvula de flotador con la salida bajo el agua no tiene ninguno.</translation>
    </message>
    <message>
        <source>Wet concrete, algae, heavy pads: a fall or a strained back. Wear soles that grip, walk, keep the way between pump and far end clear, and lift with a second person.</source>
        <translation>Concreto mojado, algas, paneles pesados: una caída o una lesión de espalda. Use suelas que agarren, camine sin correr, mantenga libre el paso entre la bomba y el extremo lejano, y levante con otra persona.</translation>
    </message>
    <message>
        <source>Birds without cooling: in extreme heat a flock can be lost in minutes. Agree a stop temperature and a longest pump-off time with the grower before a test, prefer an empty or a cool house, keep the fans running, have back-up power tested, and look at every switch before you leave.</source>
        <translation>Aves sin enfriamiento: en calor extremo una parvada se puede perder en minutos. Acuerde con el granjero, antes de una prueba, una temperatura de paro y un tiempo máximo con la bomba apagada; prefiera una caseta vacía o fresca, mantenga los ventiladores trabajando, haga probar la energía de respaldo, y revise todos los interruptores antes de irse.</translation>
    </message>
    <message>
        <source>Disease carried from farm to farm: it can cost the flock. Keep the line of separation, clean equipment and footwear, and take farms and houses in the order agreed.</source>
        <translation>Enfermedad llevada de granja en granja: puede costar la parvada. Respete la línea de separación, limpie equipo y calzado, y tome las granjas y casetas en el orden acordado.</translation>
    </message>
    <message>
        <source>Local codes and the farm&apos;s own rules come first; wiring and drinking-water pipes are work for licensed trades.</source>
        <translation>Los códigos locales y las reglas propias de la granja van primero; el cableado y los tubos de agua potable son trabajo de oficios con licencia.</translation>
    </message>
    <message>
        <source>Farm&apos;s biosecurity rules kept: clean footwear and equipment, line of separation, order of houses</source>
        <translation>Reglas de bioseguridad de la granja cumplidas: calzado y equipo limpios, línea de separación, orden de las casetas</translation>
    </message>
    <message>
        <source>Isolating devices of pumps and fans found; lock and tag at hand for work inside guards or wiring</source>
        <translation>Dispositivos de aislamiento de bombas y ventiladores ubicados; candado y etiqueta a la mano para trabajar dentro de guardas o en el cableado</translation>
    </message>
    <message>
        <source>Ground-fault protection tested on what is plugged in near water</source>
        <translation>Protección contra falla a tierra probada en lo que se conecta cerca del agua</translation>
    </message>
    <message>
        <source>Fan guards in place</source>
        <translation>Guardas de ventiladores puestas</translation>
    </message>
    <message>
        <source>Ladder sound, footed and clear of live parts, or not needed</source>
        <translation>Escalera firme, bien apoyada y lejos de partes con corriente, o no se necesita</translation>
    </message>
    <message>
        <source>Chemicals in and near the sump known; bleach and acid kept apart</source>
        <translation>Se sabe qué químicos hay en el tanque y cerca de él; cloro y ácido separados</translation>
    </message>
    <message>
        <source>Drinking water and rests planned for work in the heat; somebody knows where I am</source>
        <translation>Agua para beber y descansos previstos para trabajar en el calor; alguien sabe dónde estoy</translation>
    </message>
    <message>
        <source>Longest pump-off time and stop temperature agreed with the grower, before any pump is stopped</source>
        <translation>Tiempo máximo con la bomba apagada y temperatura de paro acordados con el granjero, antes de parar cualquier bomba</translation>
    </message>
    <message>
        <source>Back-up power of this house tested, as the grower reports</source>
        <translation>Energía de respaldo de esta caseta probada, según el granjero</translation>
    </message>
    <message>
        <source>Sump full</source>
        <translation>Tanque lleno</translation>
    </message>
    <message>
        <source>Strainer clean</source>
        <translation>Colador limpio</translation>
    </message>
    <message>
        <source>Header outlets clean and running</source>
        <translation>Orificios del distribuidor limpios y soltando agua</translation>
    </message>
    <message>
        <source>Float valve works</source>
        <translation>Válvula de flotador funciona</translation>
    </message>
    <message>
        <source>No leak at pump, riser, header or sump</source>
        <translation>Sin fugas en bomba, tubo de subida, distribuidor ni tanque</translation>
    </message>
    <message>
        <source>My locks and tags removed, guards and covers back in place</source>
        <translation>Mis candados y etiquetas retirados, guardas y tapas otra vez en su lugar</translation>
    </message>
    <message>
        <source>Every pump back on automatic</source>
        <translation>Toda bomba de vuelta en automático</translation>
    </message>
    <message>
        <source>Every fan back on automatic</source>
        <translation>Todo ventilador de vuelta en automático</translation>
    </message>
    <message>
        <source>Breakers on</source>
        <translation>Breakers del tablero encendidos</translation>
    </message>
    <message>
        <source>Make-up water open</source>
        <translation>Agua de reposición abierta</translation>
    </message>
    <message>
        <source>Flush valve shut</source>
        <translation>Válvula de lavado cerrada</translation>
    </message>
    <message>
        <source>Alarm armed</source>
        <translation>Alarma activada</translation>
    </message>
    <message>
        <source>Grower told what was changed and what is still open</source>
        <translation>Granjero informado de lo que se cambió y de lo que sigue pendiente</translation>
    </message>
    <message>
        <source>%1 gives %2 (%3), %4 of pad where %5 is the published least: %6 is missing, weak outlets leave dry streaks, and dry edges scale.</source>
        <translation>%1 da %2 (%3), %4 de panel, donde %5 es el mínimo publicado: falta %6, los orificios débiles dejan franjas secas, y los bordes secos forman sarro.</translation>
    </message>
    <message>
        <source>Bring the flow up: find the cause, likeliest first; where all is clean and open, a larger pump.</source>
        <translation>Suba el caudal: busque la causa, la más probable primero; donde todo está limpio y abierto, una bomba más grande.</translation>
    </message>
    <message>
        <source>Whether %1 gives its pads enough water is too close to call: %2 ± %3 is %4 of pad where %5 is the published least.</source>
        <translation>Si %1 da bastante agua a sus paneles es muy justo para decidir: %2 ± %3 es %4 de panel, donde %5 es el mínimo publicado.</translation>
    </message>
    <message>
        <source>Measure the flow again by sump drawdown with the make-up shut.</source>
        <translation>Mida el caudal otra vez por descenso del nivel del tanque con la reposición cerrada.</translation>
    </message>
    <message>
        <source>%1 gives %2, %3 times the %4 that its pads evaporate at the design hour; about %5 times is published, or %6. With less, little is left over to rinse salts off the face.</source>
        <translation>%1 da %2, %3 veces los %4 que sus paneles evaporan en la hora de diseño; lo publicado son unas %5 veces, o %6. Con menos, queda poco para enjuagar las sales de la cara.</translation>
    </message>
    <message>
        <source>Bring the flow up, and rinse the pads more often until then.</source>
        <translation>Suba el caudal, y mientras tanto enjuague los paneles más seguido.</translation>
    </message>
    <message>
        <source>The flow of %1 is %2 %3 but %4 %5: %6 apart, where their uncertainties explain at most %7. All that is worked out from it is that unsure.</source>
        <translation>El caudal de %1 es %2 %3, pero %4 %5: una diferencia de %6, cuando sus incertidumbres explican %7 como máximo. Todo lo que se calcula de él es así de incierto.</translation>
    </message>
    <message>
        <source>Repeat the sump&apos;s drawdown with the make-up shut and before water comes back from the pads; if it stands, look for leaks or clogged outlets between pump and catches.</source>
        <translation>Repita el descenso del tanque con la reposición cerrada y antes de que vuelva agua de los paneles; si se confirma, busque fugas u orificios tapados entre la bomba y las captaciones.</translation>
    </message>
    <message>
        <source>The flow of %1, %2 %3, is known only to ± %4: all that is worked out from it may be off by %5.</source>
        <translation>El caudal de %1, %2 %3, se conoce solo a ± %4: todo lo que se calcula de él puede estar errado en %5.</translation>
    </message>
    <message>
        <source>the humidity outside</source>
        <translation>la humedad exterior</translation>
    </message>
    <message>
        <source>the temperature behind the pad</source>
        <translation>la temperatura detrás del panel</translation>
    </message>
    <message>
        <source>the temperature outside</source>
        <translation>la temperatura exterior</translation>
    </message>
    <message>
        <source>the pads</source>
        <translation>los paneles</translation>
    </message>
    <message>
        <source>Only %2 of the possible cooling is reached behind %1, where %3 is published for this air speed and thickness: the air is %4 warmer than it could be %5.</source>
        <translation>Detrás de %1 se alcanza solo %2 del enfriamiento posible, donde lo publicado para esta velocidad del aire y este espesor es %3: el aire está %4 más caliente de lo que podría %5.</translation>
    </message>
    <message>
        <source>Find the cause, likeliest first; then read both temperatures again.</source>
        <translation>Busque la causa, la más probable primero; luego lea otra vez las dos temperaturas.</translation>
    </message>
    <message>
        <source>By the readings %2 of the possible cooling is reached behind %1, where %3 is published, but they are good to ± %4 only: too close to call. Most of that comes from %5.</source>
        <translation>Según las lecturas, detrás de %1 se alcanza %2 del enfriamiento posible, donde lo publicado es %3, pero solo son buenas a ± %4: muy justo para decidir. La mayor parte de eso viene de %5.</translation>
    </message>
    <message>
        <source>Read it again in a drier hour, and %1 with a better instrument.</source>
        <translation>Repita la lectura en una hora más seca, y lea %1 con un mejor instrumento.</translation>
    </message>
    <message>
        <source>By the readings %2 of the possible cooling is reached behind %1, where a clean new pad gives %3: a reading is wrong, and so is all evaporation worked out from it.</source>
        <translation>Según las lecturas, detrás de %1 se alcanza %2 del enfriamiento posible, donde un panel nuevo y limpio da %3: una lectura está mal, y con ella toda la evaporación que se calcula.</translation>
    </message>
    <message>
        <source>Read temperature and humidity outside, and temperature behind, again.</source>
        <translation>Lea otra vez la temperatura y la humedad afuera, y la temperatura detrás.</translation>
    </message>
    <message>
        <source>A thermometer behind the pad that is wetted by drops.</source>
        <translation>Un termómetro detrás del panel que mojan las gotas.</translation>
    </message>
    <message>
        <source>Shield it from drops and read it again a step farther in.</source>
        <translation>Protéjalo de las gotas y léalo otra vez un paso más adentro.</translation>
    </message>
    <message>
        <source>A humidity reading that is too high.</source>
        <translation>Una lectura de humedad demasiado alta.</translation>
    </message>
    <message>
        <source>Let the hygrometer hang in the shade for ten minutes; compare it with a wet bulb.</source>
        <translation>Deje colgado el higrómetro a la sombra diez minutos; compárelo con un bulbo húmedo.</translation>
    </message>
    <message>
        <source>The controller was told a %1 of %2, but %3 takes %4: every run that it works out from that ends %5 too soon for the far end.</source>
        <translation>Al controlador se le indicó un %1 de %2, pero %3 tarda %4: cada encendido que calcula con eso termina %5 demasiado pronto para el extremo lejano.</translation>
    </message>
    <message>
        <source>The controller was told a %1 of %2, but the slowest, %3, takes %4: every run that it works out from that pumps %5 too long.</source>
        <translation>Al controlador se le indicó un %1 de %2, pero el más lento, %3, tarda %4: cada encendido que calcula con eso bombea %5 de más.</translation>
    </message>
    <message>
        <source>Enter %1, the reading and its uncertainty.</source>
        <translation>Ingrese %1, la lectura más su incertidumbre.</translation>
    </message>
    <message>
        <source>Another setting or an earlier trim changes the on-time.</source>
        <translation>Otro ajuste o una corrección anterior cambia el tiempo de encendido.</translation>
    </message>
    <message>
        <source>Go through every page of the controller that speaks of pads; let one review pass and read it again.</source>
        <translation>Recorra todas las páginas del controlador que hablan de los paneles; deje pasar una revisión y léalo otra vez.</translation>
    </message>
    <message>
        <source>The on-time counts from a full header, and what is shown is the whole run.</source>
        <translation>El tiempo de encendido cuenta desde el distribuidor lleno, y lo que se muestra es el encendido completo.</translation>
    </message>
    <message>
        <source>Time one run from pump start to pump stop.</source>
        <translation>Tome el tiempo de un encendido, del arranque al paro de la bomba.</translation>
    </message>
    <message>
        <source>The timer shows an on-time of %1 now, but its settings allow no less than %2: pads get %3 less in every run than is set</source>
        <translation>El temporizador muestra ahora un tiempo de encendido de %1, pero sus ajustes no permiten menos de %2: en cada encendido los paneles reciben %3 menos de lo ajustado</translation>
    </message>
    <message>
        <source>The timer shows an on-time of %1 now, but its settings allow no more than %2: it runs %3 longer in every period than is set</source>
        <translation>El temporizador muestra ahora un tiempo de encendido de %1, pero sus ajustes no permiten más de %2: en cada periodo trabaja %3 más de lo ajustado</translation>
    </message>
    <message>
        <source>%1, %2 in an hour.</source>
        <translation>%1, %2 en una hora.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Find out what sets the run before anything else is changed.</source>
        <translation>Averigüe qué fija el encendido antes de cambiar cualquier otra cosa.</translation>
    </message>
    <message>
        <source>This controller counts its on-times from a full header, and no fill time is known: how long the pump runs, and so whether the pads get enough, is not judged.</source>
        <translation>Este controlador cuenta sus tiempos de encendido desde el distribuidor lleno, y no se conoce el tiempo de llenado: cuánto trabaja la bomba, y por tanto si los paneles reciben bastante, no se evalúa.</translation>
    </message>
    <message>
        <source>Time the fill of every bank on this timer.</source>
        <translation>Tome el tiempo de llenado de todos los bancos de este temporizador.</translation>
    </message>
    <message>
        <source>The pipe from pump to header, which is not entered, holds the difference.</source>
        <translation>El tubo de la bomba al distribuidor, que no está ingresado, contiene la diferencia.</translation>
    </message>
    <message>
        <source>Enter its length and bore, or time the water to the pump end of the header.</source>
        <translation>Ingrese su largo y su diámetro interior, o tome el tiempo del agua hasta el extremo del distribuidor en la bomba.</translation>
    </message>
    <message>
        <source>Water takes %1 ± %2 to the far end of %3; at %4 about %5 is to be expected, at most %6. Every run pumps %7 longer before the far end gets water.</source>
        <translation>El agua tarda %1 ± %2 en llegar al extremo lejano de %3; con %4 se esperan cerca de %5, como máximo %6. Cada encendido bombea %7 más antes de que el extremo lejano reciba agua.</translation>
    </message>
    <message>
        <source>Find the cause, likeliest first, then time the fill again: settings built on this one carry the loss along.</source>
        <translation>Busque la causa, la más probable primero; luego tome otra vez el tiempo de llenado: los ajustes basados en este arrastran la pérdida.</translation>
    </message>
    <message>
        <source>Water is at the far end of %1 after only %2 ± %3; at %4 about %5 is to be expected, at least %6. If the header was not empty, an on-time built on this is up to %7 short.</source>
        <translation>El agua está en el extremo lejano de %1 después de solo %2 ± %3; con %4 se esperan cerca de %5, al menos %6. Si el distribuidor no estaba vacío, un tiempo de encendido basado en esto es hasta %7 demasiado corto.</translation>
    </message>
    <message>
        <source>Time the fill again from an empty header.</source>
        <translation>Tome el tiempo de llenado otra vez con el distribuidor vacío.</translation>
    </message>
    <message>
        <source>Set it to between %1 and %2, with all tunnel fans on before.</source>
        <translation>Póngala entre %1 y %2, con todos los ventiladores de túnel encendidos antes.</translation>
    </message>
    <message>
        <source>Pads may start at %1, %2 below the %3 from which older birds need them: air is wetted where moving it would do, litter gets damp, and water is used for little.</source>
        <translation>Los paneles pueden arrancar a %1, %2 por debajo de los %3 desde los que los necesitan las aves mayores: se moja aire donde bastaría moverlo, la cama se humedece, y se gasta agua para poco.</translation>
    </message>
    <message>
        <source>Pads wait until the house is at %1, %2 above the %3 by which birds of %4 days need them: they stand that much hotter before any cooling begins.</source>
        <translation>Los paneles esperan hasta que la caseta está a %1, %2 por encima de los %3 a los que aves de %4 días ya los necesitan: quedan ese tanto más calientes antes de que empiece el enfriamiento.</translation>
    </message>
    <message>
        <source>With all fans that run with the pads, air goes down the house at %1, below the %2 that older birds should have before pads are used: %3 is missing.</source>
        <translation>Con todos los ventiladores que trabajan con los paneles, el aire recorre la caseta a %1, por debajo de los %2 que las aves mayores deben tener antes de usar los paneles: falta %3.</translation>
    </message>
    <message>
        <source>Raise the air speed first: belts, shutters and blades clean, every fan running, leaks of the house closed; then more fans. Guards stay on.</source>
        <translation>Suba primero la velocidad del aire: bandas, persianas y aspas limpias, todos los ventiladores trabajando, fugas de aire de la caseta cerradas; luego más ventiladores. Las guardas se quedan puestas.</translation>
    </message>
    <message>
        <source>Set the humidity cut-off to %1.</source>
        <translation>Ponga el corte por humedad en %1.</translation>
    </message>
    <message>
        <source>Pads may run up to %1 humidity outside, but at %2 they cool by only %3 there: the house gets damp for next to nothing.</source>
        <translation>Los paneles pueden trabajar hasta %1 de humedad afuera, pero a %2 ahí solo enfrían %3: la caseta se humedece por casi nada.</translation>
    </message>
    <message>
        <source>Pads stop at %1 humidity outside, where at %2 they still cool by %3: that much cooling is lost although it is there.</source>
        <translation>Los paneles paran a %1 de humedad afuera, donde a %2 todavía enfrían %3: se pierde ese enfriamiento aunque está disponible.</translation>
    </message>
    <message>
        <source>As entered, the header of %1 would not bring water to its far end at %2, yet water was timed there after %3: flow, bore, outlets or slope are not as entered, and all that follows from them is wrong.</source>
        <translation>Como está ingresado, el distribuidor de %1 no llevaría agua a su extremo lejano con %2, pero ahí se tomó el tiempo del agua después de %3: caudal, diámetro, orificios o desnivel no son como se ingresaron, y todo lo que sale de ellos está mal.</translation>
    </message>
    <message>
        <source>Measure the flow again, and the header&apos;s bore, outlets and slope.</source>
        <translation>Mida otra vez el caudal, y el diámetro, los orificios y el desnivel del distribuidor.</translation>
    </message>
    <message>
        <source>At %1 the first outlets of %2 take all the water before the header is full: little or nothing reaches the far end, and that pad stays dry.</source>
        <translation>Con %1, los primeros orificios de %2 toman toda el agua antes de que se llene el distribuidor: al extremo lejano llega poco o nada, y ese panel queda seco.</translation>
    </message>
    <message>
        <source>More flow, or fewer or smaller outlets.</source>
        <translation>Más caudal, o menos orificios, o más pequeños.</translation>
    </message>
    <message>
        <source>At %1, %2 of the %3 outlets of %4 get no water: the pad below them stays dry.</source>
        <translation>Con %1, %2 de los %3 orificios de %4 no reciben agua: el panel debajo de ellos queda seco.</translation>
    </message>
    <message>
        <source>Level the header; if that is done, more flow or smaller outlets.</source>
        <translation>Nivele el distribuidor; si ya está, más caudal u orificios más pequeños.</translation>
    </message>
    <message>
        <source>A header that rises or sags along its length.</source>
        <translation>Un distribuidor que sube o se comba a lo largo.</translation>
    </message>
    <message>
        <source>Sight along it, or hold a level to it at both ends and the middle.</source>
        <translation>Mírelo de punta a punta, o ponga un nivel en los dos extremos y en el medio.</translation>
    </message>
    <message>
        <source>The weakest outlet of %1 gives %2 less than the strongest (a good header: at most %3); to wet the pad below it takes %4 more pumping than the mean outlet would need.</source>
        <translation>El orificio más débil de %1 da %2 menos que el más fuerte (un buen distribuidor: como máximo %3); mojar el panel debajo de él toma %4 más de bombeo de lo que necesitaría el orificio promedio.</translation>
    </message>
    <message>
        <source>A wider header, one fed in the middle, smaller outlets at more head, or the weak stretch cleaned and levelled; until then the advised on-time serves the weakest outlet.</source>
        <translation>Un distribuidor más ancho, uno alimentado en el medio, orificios más pequeños con más carga, o el tramo débil limpio y nivelado; hasta entonces el tiempo de encendido recomendado sirve al orificio más débil.</translation>
    </message>
    <message>
        <source>%1 takes a head of %2 for %3, where clean outlets would ask for %4: its outlets pass about %5 of what they should, and the pump works against the rest.</source>
        <translation>%1 necesita una carga de %2 para %3, donde orificios limpios pedirían %4: sus orificios dejan pasar cerca de %5 de lo que deberían, y la bomba trabaja contra el resto.</translation>
    </message>
    <message>
        <source>Flush the header through its far end, clean the outlets, read flow and head again.</source>
        <translation>Lave el distribuidor por su extremo lejano, limpie los orificios, lea otra vez caudal y carga.</translation>
    </message>
    <message>
        <source>%1 passes %2 at a head of only %3, where its outlets would ask for %4: water leaves by %5 of their area, and what does not go through outlets does not wet the pad.</source>
        <translation>%1 deja pasar %2 con una carga de solo %3, donde sus orificios pedirían %4: el agua sale por %5 de su área, y la que no pasa por los orificios no moja el panel.</translation>
    </message>
    <message>
        <source>Find where water leaves the header, then read flow and head again.</source>
        <translation>Busque por dónde sale agua del distribuidor, luego lea otra vez caudal y carga.</translation>
    </message>
    <message>
        <source>Set the humidity cut-off to %1, as advised.</source>
        <translation>Ponga el corte por humedad en %1, como se recomienda.</translation>
    </message>
    <message>
        <source>Raise the humidity cut-off above %1, or leave it off: in such heat no humidity may stop the pads.</source>
        <translation>Suba el corte por humedad por encima de %1, o déjelo apagado: con ese calor ninguna humedad puede detener los paneles.</translation>
    </message>
    <message>
        <source>The humidity cut-off of %1 stops the pads for %2 of the design day in which it is %3 or hotter outside: at up to %4 and %5 birds lose %6 of cooling.</source>
        <translation>El corte por humedad de %1 detiene los paneles durante %2 del día de diseño en que afuera hay %3 o más: con hasta %4 y %5 de humedad las aves pierden %6 de enfriamiento.</translation>
    </message>
    <message>
        <source>With %1 and %2 outside at the readings, the humidity cut-off of %3 kept the pads off in heat in which birds need them.</source>
        <translation>Con %1 y %2 de humedad afuera en las lecturas, el corte por humedad de %3 mantuvo apagados los paneles con un calor en que las aves los necesitan.</translation>
    </message>
    <message>
        <source>The humidity sensor hangs in the house, where wet pads make about %1, above the cut-off of %2: the pads shut themselves off while they work, most of all when it is hot.</source>
        <translation>El sensor de humedad cuelga en la caseta, donde los paneles mojados producen cerca de %1 de humedad, por encima del corte de %2: los paneles se apagan solos mientras trabajan, sobre todo cuando hace calor.</translation>
    </message>
    <message>
        <source>Leave the cut-off off, or hang the sensor outside, in the shade.</source>
        <translation>Deje apagado el corte, o cuelgue el sensor afuera, a la sombra.</translation>
    </message>
    <message>
        <source>Pads stop above %1 humidity, but no humidity sensor is described: in the house it would read the damp that pads make, outside it would not.</source>
        <translation>Los paneles paran por encima de %1 de humedad, pero no hay sensor de humedad descrito: en la caseta leería la humedad que producen los paneles, afuera no.</translation>
    </message>
    <message>
        <source>Look where the sensor hangs and describe it with the house.</source>
        <translation>Vea dónde cuelga el sensor y descríbalo con la caseta.</translation>
    </message>
    <message>
        <source>Pads stop above %1 humidity, and humidity is sensed both outside and in the house: if the timer reads the one in the house, pads shut themselves off.</source>
        <translation>Los paneles paran por encima de %1 de humedad, y la humedad se mide tanto afuera como en la caseta: si el temporizador lee el de la caseta, los paneles se apagan solos.</translation>
    </message>
    <message>
        <source>Find out which sensor the timer reads, and let it be the one outside.</source>
        <translation>Averigüe qué sensor lee el temporizador, y haga que sea el de afuera.</translation>
    </message>
    <message>
        <source>Pads stop above %1 humidity in the house, which pads make themselves: on damper days than the one looked at they shut themselves off.</source>
        <translation>Los paneles paran por encima de %1 de humedad en la caseta, que ellos mismos producen: en días más húmedos que el considerado se apagan solos.</translation>
    </message>
    <message>
        <source>an on-time of 0 s</source>
        <translation>un tiempo de encendido de 0 s</translation>
    </message>
    <message>
        <source>pad hours</source>
        <translation>el horario de los paneles</translation>
    </message>
    <message>
        <source>the humidity cut-off</source>
        <translation>el corte por humedad</translation>
    </message>
    <message>
        <source>the lowest house temperature</source>
        <translation>la temperatura mínima de la caseta</translation>
    </message>
    <message>
        <source>the start temperature</source>
        <translation>la temperatura de arranque</translation>
    </message>
    <message>
        <source>On the design day %1 keeps the pads off for %2 in which it is %3 or more outside, up to %4: from there on moving air alone heats birds, and a flock can be lost.</source>
        <translation>En el día de diseño, %1 mantiene apagados los paneles durante %2 en que afuera hay %3 o más, hasta %4: desde ahí el aire en movimiento por sí solo calienta a las aves, y se puede perder una parvada.</translation>
    </message>
    <message>
        <source>At the hottest hour of the design day, %2, %1 keeps the pads off: from %3 on moving air alone heats birds, and a flock can be lost.</source>
        <translation>En la hora más calurosa del día de diseño, %2, %1 mantiene apagados los paneles: desde %3 el aire en movimiento por sí solo calienta a las aves, y se puede perder una parvada.</translation>
    </message>
    <message>
        <source>Change that setting now, so that pads are there in such heat; where pads are off in it, restore them at once. Never stop fans.</source>
        <translation>Cambie ese ajuste ahora, para que haya paneles con ese calor; donde los paneles estén apagados con ese calor, restablézcalos de inmediato. Nunca pare los ventiladores.</translation>
    </message>
    <message>
        <source>The pump draws air: a leak on its suction side, or a pipe that empties between runs.</source>
        <translation>La bomba aspira aire: una fuga en su lado de succión, o un tubo que se vacía entre encendidos.</translation>
    </message>
    <message>
        <source>Watch the first outlets while the header fills: spitting and bubbles mean air. Tighten the suction side, then time again.</source>
        <translation>Observe los primeros orificios mientras se llena el distribuidor: si escupen y burbujean, hay aire. Apriete el lado de succión, luego tome el tiempo otra vez.</translation>
    </message>
    <message>
        <source>Clogged filter or strainer.</source>
        <translation>Filtro o colador tapado.</translation>
    </message>
    <message>
        <source>Read the pressure before and behind the filter; clean filter and strainer, then measure the flow again by sump drawdown.</source>
        <translation>Lea la presión antes y después del filtro; limpie filtro y colador, luego mida otra vez el caudal por descenso del nivel del tanque.</translation>
    </message>
    <message>
        <source>A valve that is not fully open.</source>
        <translation>Una válvula que no está abierta del todo.</translation>
    </message>
    <message>
        <source>Follow the pipe from the pump to the header and look at every handle; open it, then time again.</source>
        <translation>Siga el tubo de la bomba al distribuidor y revise cada manija; ábrala, luego tome el tiempo otra vez.</translation>
    </message>
    <message>
        <source>A worn pump, or one that turns the wrong way.</source>
        <translation>Una bomba gastada, o que gira al revés.</translation>
    </message>
    <message>
        <source>With filter clean and valves open, compare flow and head with the pump&apos;s curve or an earlier visit; motor and wiring are for a licensed electrician.</source>
        <translation>Con el filtro limpio y las válvulas abiertas, compare caudal y carga con la curva de la bomba o con una visita anterior; motor y cableado son para un electricista con licencia.</translation>
    </message>
    <message>
        <source>A leak in the pipe from pump to header.</source>
        <translation>Una fuga en el tubo de la bomba al distribuidor.</translation>
    </message>
    <message>
        <source>Walk along the pipe while the pump runs and look for water; compare the flow by sump drawdown with what is caught at the outlets.</source>
        <translation>Camine a lo largo del tubo mientras la bomba trabaja y busque agua; compare el caudal por descenso del nivel del tanque con lo que se capta en los orificios.</translation>
    </message>
    <message>
        <source>Read the head at the pump end of the header: more head with less flow means outlets, less head means pump, filter or valve. Flush the header and catch water along it.</source>
        <translation>Lea la carga en el extremo del distribuidor en la bomba: más carga con menos caudal indica orificios; menos carga indica bomba, filtro o válvula. Lave el distribuidor y capte agua a lo largo de él.</translation>
    </message>
    <message>
        <source>Water is lost on the way: flush valve, end cap or a joint of the header.</source>
        <translation>Se pierde agua en el camino: válvula de lavado, tapón o una unión del distribuidor.</translation>
    </message>
    <message>
        <source>Walk along the header while it fills; shut the flush valve, look at cap and joints.</source>
        <translation>Camine a lo largo del distribuidor mientras se llena; cierre la válvula de lavado, revise tapón y uniones.</translation>
    </message>
    <message>
        <source>The header was not empty when the pump started.</source>
        <translation>El distribuidor no estaba vacío cuando arrancó la bomba.</translation>
    </message>
    <message>
        <source>Let it drain until no outlet drips, or open the flush valve, then time again.</source>
        <translation>Déjelo vaciar hasta que ningún orificio gotee, o abra la válvula de lavado, luego tome el tiempo otra vez.</translation>
    </message>
    <message>
        <source>Bore, outlets or supply pipe are not as entered.</source>
        <translation>Diámetro, orificios o tubo de alimentación no son como se ingresaron.</translation>
    </message>
    <message>
        <source>Measure the header&apos;s inside bore, an outlet and the supply pipe, and correct the entries.</source>
        <translation>Mida el diámetro interior del distribuidor, un orificio y el tubo de alimentación, y corrija lo ingresado.</translation>
    </message>
    <message>
        <source>A scaled pad: it drips before it is wet.</source>
        <translation>Un panel con sarro: gotea antes de estar mojado.</translation>
    </message>
    <message>
        <source>Feel the face and the lower edge while it drips: crust, and dry paper between wet streaks.</source>
        <translation>Toque la cara y el borde inferior mientras gotea: costra, y papel seco entre las franjas mojadas.</translation>
    </message>
    <message>
        <source>Water is held up or led astray between header and pad, or by a blocked gutter.</source>
        <translation>El agua se detiene o se desvía entre el distribuidor y el panel, o por una canaleta tapada.</translation>
    </message>
    <message>
        <source>Look under the header&apos;s cover and along the gutter for water that does not go through the pad.</source>
        <translation>Mire bajo la tapa del distribuidor y a lo largo de la canaleta si hay agua que no pasa por el panel.</translation>
    </message>
    <message>
        <source>A pad that was not bone dry when the pump started.</source>
        <translation>Un panel que no estaba totalmente seco cuando arrancó la bomba.</translation>
    </message>
    <message>
        <source>Run the fans with the pump off until the pad is dry to the core, then time again.</source>
        <translation>Deje trabajar los ventiladores con la bomba apagada hasta que el panel esté seco hasta el centro, luego tome el tiempo otra vez.</translation>
    </message>
    <message>
        <source>Dry streaks: outlets clogged, or too little water.</source>
        <translation>Franjas secas: orificios tapados, o muy poca agua.</translation>
    </message>
    <message>
        <source>Look along the face from the side with the pump running; trace each dry streak up to its outlets.</source>
        <translation>Mire a lo largo de la cara, desde un lado y con la bomba trabajando; siga cada franja seca hacia arriba hasta sus orificios.</translation>
    </message>
    <message>
        <source>Air that goes around the pad: gaps at the frame or between pads.</source>
        <translation>Aire que rodea el panel: huecos en el marco o entre paneles.</translation>
    </message>
    <message>
        <source>Hold a strip of tissue along the frame, above and below the pad with the fans running.</source>
        <translation>Sostenga una tira de papel delgado a lo largo del marco, arriba y abajo del panel, con los ventiladores trabajando.</translation>
    </message>
    <message>
        <source>Air faster than the pad is made for.</source>
        <translation>Aire más rápido que aquel para el que está hecho el panel.</translation>
    </message>
    <message>
        <source>Take the air speed at five points or more of the face.</source>
        <translation>Tome la velocidad del aire en cinco o más puntos de la cara.</translation>
    </message>
    <message>
        <source>A thermometer in the sun, in spray or close to a warm wall.</source>
        <translation>Un termómetro al sol, en el rocío o cerca de una pared caliente.</translation>
    </message>
    <message>
        <source>Read both places again with the same thermometer, shaded and dry, in moving air.</source>
        <translation>Lea otra vez los dos lugares con el mismo termómetro, a la sombra y seco, con aire en movimiento.</translation>
    </message>
    <message>
        <source>Passages of the pad clogged by scale, algae or dust.</source>
        <translation>Canales del panel tapados por sarro, algas o polvo.</translation>
    </message>
    <message>
        <source>Shine a lamp through the pad and look; compare with a clean stretch.</source>
        <translation>Alumbre con una lámpara a través del panel y mire; compare con un tramo limpio.</translation>
    </message>
    <message>
        <source>Runs bring %1 of the water that a pad evaporates at the hottest hour, not %2 as the program would: where an outlet clogs or a day is hotter, the far end is the first to dry.</source>
        <translation>Los encendidos llevan %1 del agua que un panel evapora en la hora más calurosa, y no %2 como haría el programa: donde se tapa un orificio o un día es más caluroso, el extremo lejano es el primero en secarse.</translation>
    </message>
    <message>
        <source>Rests of %1 are advised where the program asks for %2: a pump that is started again so soon wears, and its motor has less time to cool.</source>
        <translation>Se recomiendan descansos de %1 donde el programa pide %2: una bomba que arranca de nuevo tan pronto se desgasta, y su motor tiene menos tiempo para enfriarse.</translation>
    </message>
    <message>
        <source>The far end may go without water for %1 of the time that it stays wet, not %2 as the program would: that leaves %3 of it for a hotter day and an error of the stopwatch before it dries, cools less and scales.</source>
        <translation>El extremo lejano puede estar sin agua %1 del tiempo que queda mojado, y no %2 como haría el programa: eso deja %3 de ese tiempo para un día más caluroso y un error del cronómetro antes de que se seque, enfríe menos y forme sarro.</translation>
    </message>
    <message>
        <source>With a share of drying at constant rate of %1 and not %2, a pad is taken to dry more slowly at first: rinses get shorter, and that it dries faster than water comes is found later.</source>
        <translation>Con una parte del secado a ritmo constante de %1 y no de %2, se supone que un panel se seca más despacio al principio: los enjuagues se acortan, y se descubre más tarde que se seca más rápido de lo que llega el agua.</translation>
    </message>
    <message>
        <source>Pads may start as late as %1, %2 above the published band: older birds stand that much hotter before any cooling begins.</source>
        <translation>Los paneles pueden arrancar apenas a %1, %2 por encima de la banda publicada: las aves mayores quedan ese tanto más calientes antes de que empiece el enfriamiento.</translation>
    </message>
    <message>
        <source>Pads may start as early as %1, %2 below the published band: air is wetted where moving it would do, and litter gets damp.</source>
        <translation>Los paneles pueden arrancar ya a %1, %2 por debajo de la banda publicada: se moja aire donde bastaría moverlo, y la cama se humedece.</translation>
    </message>
    <message>
        <source>Birds count as older from %1 days on, not from %2: the start temperature and the rinse then hold for birds that wet, moving air can chill.</source>
        <translation>Las aves cuentan como mayores desde %1 días, y no desde %2: la temperatura de arranque y el enjuague valen entonces para aves que el aire húmedo en movimiento puede enfriar demasiado.</translation>
    </message>
    <message>
        <source>Pads count as usable from %1 of air down the house on, not from %2: slower damp air takes less heat off birds.</source>
        <translation>Los paneles cuentan como utilizables desde %1 de aire a lo largo de la caseta, y no desde %2: un aire húmedo más lento quita menos calor a las aves.</translation>
    </message>
    <message>
        <source>Pads count as useless until they cool by %1, not by %2: the humidity cut-off and the pad hours take away that much cooling where it is there.</source>
        <translation>Los paneles cuentan como inútiles hasta que enfrían %1, y no %2: el corte por humedad y el horario de los paneles quitan ese enfriamiento donde está disponible.</translation>
    </message>
    <message>
        <source>Up to %1 outside, and not only up to %2, humidity may stop the pads: birds are without them in that heat.</source>
        <translation>Hasta %1 afuera, y no solo hasta %2, la humedad puede detener los paneles: con ese calor las aves están sin ellos.</translation>
    </message>
    <message>
        <source>Pads may stay wet until %1, not only until %2: the house is damp for longer into the night, and litter with it.</source>
        <translation>Los paneles pueden quedar mojados hasta las %1, y no solo hasta las %2: la caseta está húmeda más tiempo en la noche, y la cama con ella.</translation>
    </message>
    <message>
        <source>The margins and limits that were changed for this farm cannot be used together (%1): advice and findings are made with the program&apos;s own, which nobody here may have wanted.</source>
        <translation>Los márgenes y límites que se cambiaron para esta granja no se pueden usar juntos (%1): la recomendación y los hallazgos se hacen con los del programa, que quizá nadie aquí quería.</translation>
    </message>
    <message>
        <source>Put that limit right, or set it back to the program&apos;s own.</source>
        <translation>Corrija ese límite, o devuélvalo al del programa.</translation>
    </message>
    <message>
        <source>Set it back to %1, or make sure that whoever chose it knows that.</source>
        <translation>Devuélvalo a %1, o asegúrese de que quien lo eligió lo sepa.</translation>
    </message>
    <message>
        <source>Pads help for %1 on the design day in which the pad hours keep them off, at up to %2 with a start at %3: as the sun&apos;s hours are not the clock&apos;s, that is too close to call.</source>
        <translation>En el día de diseño los paneles ayudan durante %1 en que su horario los mantiene apagados, con hasta %2 y un arranque a %3: como las horas del sol no son las del reloj, es muy justo para decidir.</translation>
    </message>
    <message>
        <source>Leave the hours open: on the design day pads help day and night.</source>
        <translation>Deje abierto el horario: en el día de diseño los paneles ayudan de día y de noche.</translation>
    </message>
    <message>
        <source>Let pads run from %1 to %2.</source>
        <translation>Deje trabajar los paneles de las %1 a las %2.</translation>
    </message>
    <message>
        <source>Pad hours end at %1, but on the design day it is at or above the start temperature of %2 long after: %3 without pads, at up to %4 outside, up to %5 hotter than need be.</source>
        <translation>El horario de los paneles termina a las %1, pero en el día de diseño sigue habiendo afuera la temperatura de arranque de %2 o más mucho después: %3 sin paneles, con hasta %4 afuera, hasta %5 más caliente de lo necesario.</translation>
    </message>
    <message>
        <source>Pad hours begin at %1, but on the design day it is at or above the start temperature of %2 long before: %3 without pads, at up to %4 outside, up to %5 hotter than need be.</source>
        <translation>El horario de los paneles empieza a las %1, pero en el día de diseño hay afuera la temperatura de arranque de %2 o más desde mucho antes: %3 sin paneles, con hasta %4 afuera, hasta %5 más caliente de lo necesario.</translation>
    </message>
    <message>
        <source>Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting damp air, after which they stay wet all night.</source>
        <translation>Los paneles pueden trabajar hasta las %1, pero en el día de diseño dejan de ayudar a las %2: %3 mojando aire húmedo, y después quedan mojados toda la noche.</translation>
    </message>
    <message>
        <source>Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting damp air, and the slowest pad is dry only at %4, later than %5.</source>
        <translation>Los paneles pueden trabajar hasta las %1, pero en el día de diseño dejan de ayudar a las %2: %3 mojando aire húmedo, y el panel más lento está seco apenas a las %4, más tarde que las %5.</translation>
    </message>
    <message>
        <source>Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting damp air, into the night.</source>
        <translation>Los paneles pueden trabajar hasta las %1, pero en el día de diseño dejan de ayudar a las %2: %3 mojando aire húmedo, ya entrada la noche.</translation>
    </message>
    <message>
        <source>End the pad hours at %1, so that pads dry once a day.</source>
        <translation>Termine el horario de los paneles a las %1, para que los paneles se sequen una vez al día.</translation>
    </message>
    <message>
        <source>Pads may run from %1 on, %2 before they begin to help on the design day: it is %3 outside, and birds&apos; heat alone can call for pads in damp morning air.</source>
        <translation>Los paneles pueden trabajar desde las %1, %2 antes de que empiecen a ayudar en el día de diseño: afuera hay %3, y el solo calor de las aves puede pedir los paneles en el aire húmedo de la mañana.</translation>
    </message>
    <message>
        <source>Begin the pad hours at %1.</source>
        <translation>Empiece el horario de los paneles a las %1.</translation>
    </message>
    <message>
        <source>Pad hours begin and end at %1: on one timer that is all day, on another never, and then birds get no pads at all.</source>
        <translation>El horario de los paneles empieza y termina a las %1: en un temporizador eso es todo el día, en otro nunca, y entonces las aves se quedan por completo sin paneles.</translation>
    </message>
    <message>
        <source>Set an end that differs, or see with your own eyes that pads run when called for.</source>
        <translation>Ponga un final diferente, o vea con sus propios ojos que los paneles trabajan cuando se piden.</translation>
    </message>
    <message>
        <source>Air goes through %1 at %2, above the %3 that pads of %4 are made for: it would need %5 more pad face.</source>
        <translation>El aire pasa por %1 a %2, por encima de los %3 para los que están hechos los paneles de %4: haría falta %5 más de cara de panel.</translation>
    </message>
    <message>
        <source>%1 The air behind is %2 warmer for it %3.</source>
        <translation>%1 Por eso el aire detrás está %2 más caliente %3.</translation>
    </message>
    <message>
        <source>Clear what blocks part of the face; where none is blocked, more pad. Never stop fans for it in hot weather.</source>
        <translation>Quite lo que tapa parte de la cara; donde nada la tapa, más panel. Nunca pare ventiladores por eso en clima caluroso.</translation>
    </message>
    <message>
        <source>The air speed of %1, %2, comes from %3 of the face (%4 would do); along one pad it goes from %5 to %6, so evaporation and expected cooling are as unsure.</source>
        <translation>La velocidad del aire de %1, %2, sale de %3 de la cara (%4 bastarían); a lo largo de un panel va de %5 a %6, así que la evaporación y el enfriamiento esperado son igual de inciertos.</translation>
    </message>
    <message>
        <source>one point</source>
        <translation>un punto</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>Take %1 points or more, evenly spread over the face.</source>
        <translation>Tome %1 puntos o más, repartidos parejo sobre la cara.</translation>
    </message>
    <message>
        <source>Air goes through %1 at %2 in one place and %3 in another, a spread of %4: the fast part dries first and cools least.</source>
        <translation>El aire pasa por %1 a %2 en un lugar y a %3 en otro, una dispersión de %4: la parte rápida se seca primero y es la que menos enfría.</translation>
    </message>
    <message>
        <source>Look for what blocks the slow part, outside and inside; judge drying at the fast part.</source>
        <translation>Busque qué tapa la parte lenta, afuera y adentro; juzgue el secado en la parte rápida.</translation>
    </message>
    <message>
        <source>Something stands in the air&apos;s way before or behind the pad.</source>
        <translation>Algo estorba el paso del aire delante o detrás del panel.</translation>
    </message>
    <message>
        <source>Look for stacked goods, weeds, curtains and doors that are half open.</source>
        <translation>Busque cosas apiladas, maleza, cortinas y puertas a medio abrir.</translation>
    </message>
    <message>
        <source>Fans that pull from one side.</source>
        <translation>Ventiladores que succionan de un solo lado.</translation>
    </message>
    <message>
        <source>Compare with the same fans on both sides of the house.</source>
        <translation>Compare con los mismos ventiladores en los dos lados de la caseta.</translation>
    </message>
    <message>
        <source>The air loses %1 in the pad of %2; a clean one takes %3 to %4 at %5. Fans move less air against it.</source>
        <translation>El aire pierde %1 en el panel de %2; uno limpio quita de %3 a %4 con aire a %5. Contra eso los ventiladores mueven menos aire.</translation>
    </message>
    <message>
        <source>Clean the pad; where crust stays in its passages, replace it.</source>
        <translation>Limpie el panel; donde queda costra en sus canales, cámbielo.</translation>
    </message>
    <message>
        <source>More than the pad lies between the manometer&apos;s two ends.</source>
        <translation>Entre los dos extremos del manómetro hay más que el panel.</translation>
    </message>
    <message>
        <source>Hold one end just outside and the other just behind the pad.</source>
        <translation>Sostenga un extremo justo afuera y el otro justo detrás del panel.</translation>
    </message>
    <message>
        <source>The air loses only %1 in the pad of %2, where a wet one takes %3 to %4 at %5: part of it goes another way and is not cooled.</source>
        <translation>El aire pierde solo %1 en el panel de %2, donde uno mojado quita de %3 a %4 con aire a %5: una parte se va por otro lado y no se enfría.</translation>
    </message>
    <message>
        <source>Close gaps; then measure drop and speed again with the pad wet.</source>
        <translation>Cierre los huecos; luego mida otra vez caída y velocidad con el panel mojado.</translation>
    </message>
    <message>
        <source>The pad was dry when the drop was read.</source>
        <translation>El panel estaba seco cuando se leyó la caída.</translation>
    </message>
    <message>
        <source>Read it again while the far end drips.</source>
        <translation>Léala otra vez mientras el extremo lejano gotea.</translation>
    </message>
    <message>
        <source>Thin air: the published values are for low farms.</source>
        <translation>Aire poco denso: los valores publicados son para granjas a baja altitud.</translation>
    </message>
    <message>
        <source>Compare with an earlier visit to this house.</source>
        <translation>Compare con una visita anterior a esta caseta.</translation>
    </message>
    <message>
        <source>The house stands at %1 below outside, above the %2 to %3 that is usual with pads: the fans move less air than they are counted for, and pads and birds get less of it.</source>
        <translation>La caseta está %1 por debajo de la presión de afuera, más que los %2 a %3 usuales con paneles: los ventiladores mueven menos aire del que se les cuenta, y paneles y aves reciben menos.</translation>
    </message>
    <message>
        <source>Open the air&apos;s way, likeliest first, then read pressure and air speed again.</source>
        <translation>Abra el paso del aire, lo más probable primero; luego lea otra vez presión y velocidad del aire.</translation>
    </message>
    <message>
        <source>Tunnel doors or curtains behind the pads that are not fully open.</source>
        <translation>Puertas o cortinas del túnel detrás de los paneles que no están abiertas del todo.</translation>
    </message>
    <message>
        <source>Read the pressure just behind the pads too: what is lost after them is not theirs.</source>
        <translation>Lea la presión también justo detrás de los paneles: lo que se pierde después de ellos no es suyo.</translation>
    </message>
    <message>
        <source>Too little pad for these fans.</source>
        <translation>Muy poco panel para estos ventiladores.</translation>
    </message>
    <message>
        <source>Compare the air speed at the pad face with what such pads are made for.</source>
        <translation>Compare la velocidad del aire en la cara del panel con aquella para la que están hechos esos paneles.</translation>
    </message>
    <message>
        <source>The pump runs for as long as pads are called for and never rests</source>
        <translation>La bomba trabaja todo el tiempo que se piden los paneles y nunca descansa</translation>
    </message>
    <message>
        <source>A run of %1 fills the whole period of %2, so the pump never rests</source>
        <translation>Un encendido de %1 llena todo el periodo de %2, así que la bomba nunca descansa</translation>
    </message>
    <message>
        <source>Trimming can lengthen a run to %1 in a period of %2, and from then on the pump never rests</source>
        <translation>La corrección puede alargar un encendido hasta %1 en un periodo de %2, y desde ahí la bomba nunca descansa</translation>
    </message>
    <message>
        <source>a cycle of %1 in %2 cools the same with %3 less pumping in every hour, %4 of water</source>
        <translation>un ciclo de %1 en %2 enfría lo mismo con %3 menos de bombeo en cada hora, %4 de agua</translation>
    </message>
    <message>
        <source>a cycle of %1 in %2 cools the same with %3 less pumping in every hour</source>
        <translation>un ciclo de %1 en %2 enfría lo mismo con %3 menos de bombeo en cada hora</translation>
    </message>
    <message>
        <source>%1; on the design day, with pads called for during %2, up to %3 less pumping and %4 less water</source>
        <translation>%1; en el día de diseño, con los paneles pedidos durante %2, hasta %3 menos de bombeo y %4 menos de agua</translation>
    </message>
    <message>
        <source>%1; on the design day, with pads called for during %2, up to %3 less pumping</source>
        <translation>%1; en el día de diseño, con los paneles pedidos durante %2, hasta %3 menos de bombeo</translation>
    </message>
    <message>
        <source>that is what is wanted here</source>
        <translation>eso es lo que se quiere aquí</translation>
    </message>
    <message>
        <source>a cycle was wanted here</source>
        <translation>aquí se quería un ciclo</translation>
    </message>
    <message>
        <source>no cycle would cool better</source>
        <translation>ningún ciclo enfriaría mejor</translation>
    </message>
    <message>
        <source>no cycle keeps these pads wet, and running without rest is what is advised</source>
        <translation>ningún ciclo mantiene mojados estos paneles, y lo recomendado es trabajar sin descanso</translation>
    </message>
    <message>
        <source>whether a cycle cools the same is not known, because readings are missing</source>
        <translation>no se sabe si un ciclo enfría lo mismo, porque faltan lecturas</translation>
    </message>
    <message>
        <source>Nothing to change.</source>
        <translation>Nada que cambiar.</translation>
    </message>
    <message>
        <source>Take the readings that the advice names as missing.</source>
        <translation>Tome las lecturas que la recomendación indica como faltantes.</translation>
    </message>
    <message>
        <source>Use a timer that holds an on-time and a period.</source>
        <translation>Use un temporizador que admita un tiempo de encendido y un periodo.</translation>
    </message>
    <message>
        <source>Bring every on-time below the period; how far, the readings named as missing will tell.</source>
        <translation>Baje todos los tiempos de encendido a menos del periodo; cuánto, lo dirán las lecturas indicadas como faltantes.</translation>
    </message>
    <message>
        <source>Set the base on-time to %1, the on-time ceiling to %2 and the period to %3.</source>
        <translation>Ponga el encendido base en %1, el tope de encendido en %2 y el periodo en %3.</translation>
    </message>
    <message>
        <source>Set the on-time to %1 and the period to %2.</source>
        <translation>Ponga el tiempo de encendido en %1 y el periodo en %2.</translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation>%1; %2.</translation>
    </message>
    <message>
        <source>Of the water that goes to %1, %2 evaporates by the stopwatch but %3 by flow and air. They are more than 30 % apart, so one of the two is wrong; the larger is used.</source>
        <translation>Del agua que va a %1 se evapora %2 según el cronómetro, pero %3 según caudal y aire. La diferencia pasa de 30&#xa0;%, así que uno de los dos está mal; se usa el mayor.</translation>
    </message>
    <message>
        <source>Measure the flow again by drawing down the sump with the make-up shut, and time again from a dry pad.</source>
        <translation>Mida el caudal otra vez por descenso del nivel del tanque con la reposición cerrada, y tome el tiempo otra vez desde un panel seco.</translation>
    </message>
    <message>
        <source>Wet-through of %1 was read with the fans running at one time and off, or not stated, at another: these don&apos;t time the same thing. They count as read with the fans off, which asks for more water.</source>
        <translation>El mojado completo de %1 se leyó una vez con los ventiladores encendidos y otra con ellos apagados, o sin indicarlo: no se mide lo mismo. Las lecturas cuentan como tomadas con los ventiladores apagados, lo que pide más agua.</translation>
    </message>
    <message>
        <source>Time it again with the fans in one state throughout, or set aside the readings of the other state.</source>
        <translation>Tome el tiempo otra vez con los ventiladores siempre en un mismo estado, o aparte las lecturas del otro estado.</translation>
    </message>
    <message>
        <source>The rinse of %1 ends %2 before the far end of %3, which takes %4 from dry with the fans on, would drip: what it should wash out stays there.</source>
        <translation>El enjuague de %1 termina %2 antes de que goteara el extremo lejano de %3, que necesita %4 desde seco con los ventiladores encendidos: lo que debía lavar se queda ahí.</translation>
    </message>
    <message>
        <source>Rinse for at least %1.</source>
        <translation>Enjuague durante al menos %1.</translation>
    </message>
    <message>
        <source>The rinse at %1 lies outside the pad hours, %2 before they begin at %3: it is left out, or the pads are dry again when they are needed.</source>
        <translation>El enjuague a las %1 queda fuera del horario de los paneles, %2 antes de que empiece a las %3: se omite, o los paneles están otra vez secos cuando se necesitan.</translation>
    </message>
    <message>
        <source>Rinse when pad hours begin, at %1.</source>
        <translation>Enjuague cuando empieza el horario de los paneles, a las %1.</translation>
    </message>
    <message>
        <source>At %1, when the rinse runs, it is %2 outside even on the design day, %3 below the start temperature: the house is chilled, and the pads dry off before they are called for.</source>
        <translation>A las %1, cuando trabaja el enjuague, hay %2 afuera incluso en el día de diseño, %3 por debajo de la temperatura de arranque: la caseta se enfría demasiado, y los paneles se secan antes de que se pidan.</translation>
    </message>
    <message>
        <source>Rinse at the first call for pads, or at the hour from which the design day is warm enough.</source>
        <translation>Enjuague al primer pedido de paneles, o a la hora desde la que el día de diseño es bastante cálido.</translation>
    </message>
    <message>
        <source>Every day at %1 pads are wetted for %2, whatever the temperature, with birds of %3 days: wet, moving air chills birds younger than %4 days.</source>
        <translation>Todos los días a las %1 los paneles se mojan durante %2, haya la temperatura que haya, con aves de %3 días: el aire húmedo en movimiento enfría demasiado a las aves de menos de %4 días.</translation>
    </message>
    <message>
        <source>Switch the rinse off until the birds are %1 days old.</source>
        <translation>Apague el enjuague hasta que las aves tengan %1 días.</translation>
    </message>
    <message>
        <source>at the design hour</source>
        <translation>en la hora de diseño</translation>
    </message>
    <message>
        <source>in the weather of the readings</source>
        <translation>con el clima de las lecturas</translation>
    </message>
    <message>
        <source>Set at least %1, or repeat the reading.</source>
        <translation>Ponga al menos %1, o repita la lectura.</translation>
    </message>
    <message>
        <source>Water needs %1 to reach the far end of %2, but a run lasts %3: in every period about %4 of this pad gets no water at all.</source>
        <translation>El agua necesita %1 para llegar al extremo lejano de %2, pero un encendido dura %3: en cada periodo cerca de %4 de este panel no recibe nada de agua.</translation>
    </message>
    <message>
        <source>%1 On the design day that far end is dry for all the %2 in which pads are called for.</source>
        <translation>%1 En el día de diseño ese extremo lejano está seco todo el tiempo en que se piden los paneles, %2.</translation>
    </message>
    <message>
        <source>Set the on-time to %1 in the advised period of %2.</source>
        <translation>Ponga el tiempo de encendido en %1 en el periodo recomendado de %2.</translation>
    </message>
    <message>
        <source>Let the pump run without rest while pads are called for: no cycle fits here.</source>
        <translation>Deje trabajar la bomba sin descanso mientras se piden los paneles: aquí no sirve ningún ciclo.</translation>
    </message>
    <message>
        <source>Raise the on-time above %1; what the pad drinks comes on top of that.</source>
        <translation>Suba el tiempo de encendido por encima de %1; lo que toma el panel se suma a eso.</translation>
    </message>
    <message>
        <source>The longest timed run of %1 is shorter than the %2 that %3 needs from dry, so only the rinse of %4 wets its far end.</source>
        <translation>El encendido temporizado más largo, de %1, es más corto que los %2 que %3 necesita desde seco, así que solo el enjuague de %4 moja su extremo lejano.</translation>
    </message>
    <message>
        <source>The longest timed run of %1 is shorter than the %2 that %3 needs from dry: only the rinse of %4 and the run after it wet its far end.</source>
        <translation>El encendido temporizado más largo, de %1, es más corto que los %2 que %3 necesita desde seco: solo el enjuague de %4 y el encendido que le sigue mojan su extremo lejano.</translation>
    </message>
    <message>
        <source>The run of %1 is shorter than the %2 that %3 needs from dry: after a dry start its far end drips only in run %4, %5 later.</source>
        <translation>El encendido de %1 es más corto que los %2 que %3 necesita desde seco: después de un arranque en seco, su extremo lejano gotea apenas en el encendido %4, %5 más tarde.</translation>
    </message>
    <message>
        <source>The longest timed run of %1 is %2 shorter than the %3 that %4 needs from dry: no single run wets its far end.</source>
        <translation>El encendido temporizado más largo, de %1, es %2 más corto que los %3 que %4 necesita desde seco: ningún encendido por sí solo moja su extremo lejano.</translation>
    </message>
    <message>
        <source>Keep the rinse of %1: the pads have to be wet through before birds depend on them.</source>
        <translation>Conserve el enjuague de %1: los paneles tienen que estar mojados por completo antes de que las aves dependan de ellos.</translation>
    </message>
    <message>
        <source>Let the runs begin early enough for the pads to be wet through before birds depend on them.</source>
        <translation>Haga empezar los encendidos con tiempo, para que los paneles estén mojados por completo antes de que las aves dependan de ellos.</translation>
    </message>
    <message>
        <source>Set a morning rinse of at least %1</source>
        <translation>Ponga un enjuague matutino de al menos %1</translation>
    </message>
    <message>
        <source>Run the pump by hand for %1 before the timed runs begin, and set the advised on-time and period.</source>
        <translation>Haga trabajar la bomba a mano durante %1 antes de que empiecen los encendidos temporizados, y ponga el tiempo de encendido y el periodo recomendados.</translation>
    </message>
    <message>
        <source>%1, and the advised on-time and period.</source>
        <translation>%1, y el tiempo de encendido y el periodo recomendados.</translation>
    </message>
    <message>
        <source>%1 and the on-time ceiling to %2, as advised.</source>
        <translation>%1 y el tope de encendido en %2, como se recomienda.</translation>
    </message>
    <message>
        <source>%1, and raise the ceiling to %2 too.</source>
        <translation>%1, y suba también el tope a %2.</translation>
    </message>
    <message>
        <source>%1: in this period a ceiling that long would leave the pump no rest.</source>
        <translation>%1: en este periodo un tope tan largo no dejaría descanso a la bomba.</translation>
    </message>
    <message>
        <source>%1, or repeat the reading.</source>
        <translation>%1, o repita la lectura.</translation>
    </message>
    <message>
        <source>Whether the longest timed run of %1 wets the far end of %2 from dry is too close to call: that takes %3 ± %4.</source>
        <translation>Si el encendido temporizado más largo, de %1, moja el extremo lejano de %2 desde seco es muy justo para decidir: eso necesita %3 ± %4.</translation>
    </message>
    <message>
        <source>Whether a run of %1 brings water to the far end of %2 is too close to call: that takes %3 ± %4.</source>
        <translation>Si un encendido de %1 lleva agua al extremo lejano de %2 es muy justo para decidir: eso necesita %3 ± %4.</translation>
    </message>
    <message>
        <source>Trim row %1: %2</source>
        <translation>Fila de corrección %1: %2</translation>
    </message>
    <message>
        <source>If it stands there, pads never run, however hot it gets.</source>
        <translation>Si ahí está puesto así, los paneles nunca trabajan, por mucho calor que haga.</translation>
    </message>
    <message>
        <source>It tells nothing about the pads.</source>
        <translation>No dice nada sobre los paneles.</translation>
    </message>
    <message>
        <source>If it stands there, the timer does not do what was meant.</source>
        <translation>Si ahí está puesto así, el temporizador no hace lo que se quería.</translation>
    </message>
    <message>
        <source>%1 of %2 is outside what is usual, %3 to %4: kept as found, and nothing else is judged by it. %5</source>
        <translation>%1 de %2 está fuera de lo usual, de %3 a %4: se conserva como se encontró, y nada más se juzga con eso. %5</translation>
    </message>
    <message>
        <source>Read it again at the controller; if it stands there, set it to %1, as advised.</source>
        <translation>Léalo otra vez en el controlador; si ahí está puesto así, póngalo en %1, como se recomienda.</translation>
    </message>
    <message>
        <source>Read it again at the controller, its unit too; if it stands there, correct it there.</source>
        <translation>Léalo otra vez en el controlador, también su unidad; si ahí está puesto así, corríjalo ahí.</translation>
    </message>
    <message>
        <source>%1 (%2) of %3 cannot stand in this controller as it is described: it holds %4 to %5.</source>
        <translation>%1 (%2) de %3 no puede estar en este controlador como está descrito: admite de %4 a %5.</translation>
    </message>
    <message>
        <source>Read it again at the controller; if it stands there, correct the setting template.</source>
        <translation>Léalo otra vez en el controlador; si ahí está puesto así, corrija la plantilla de ajustes.</translation>
    </message>
    <message>
        <source>The base on-time is 0 s and nothing lengthens it: the pump never runs, and the pads stay dry however hot it gets.</source>
        <translation>El encendido base es 0 s y nada lo alarga: la bomba nunca trabaja, y los paneles quedan secos por mucho calor que haga.</translation>
    </message>
    <message>
        <source>The base on-time is 0 s: no run begins before trimming makes one, %1 after pads are called for at the soonest.</source>
        <translation>El encendido base es 0 s: ningún encendido empieza antes de que la corrección forme uno, lo más pronto %1 después de que se piden los paneles.</translation>
    </message>
    <message>
        <source>The base on-time is 0 s: no run begins before trimming makes one.</source>
        <translation>El encendido base es 0 s: ningún encendido empieza antes de que la corrección forme uno.</translation>
    </message>
    <message>
        <source>Set an on-time above the fill time; how far, the readings named as missing tell.</source>
        <translation>Ponga un tiempo de encendido mayor que el de llenado; cuánto, lo dicen las lecturas indicadas como faltantes.</translation>
    </message>
    <message>
        <source>The on-time ceiling of %1 is below the base of %2: where the timer holds the ceiling, pads get %3 less water in every run, %4 in an hour; where it holds the base, nothing is ever trimmed.</source>
        <translation>El tope de encendido de %1 es menor que el encendido base de %2: donde el temporizador respeta el tope, los paneles reciben %3 menos de agua en cada encendido, %4 en una hora; donde respeta el base, nunca se corrige nada.</translation>
    </message>
    <message>
        <source>The on-time ceiling of %1 is below the base of %2: where the timer holds the ceiling, pads get %3 less water in every run; where it holds the base, nothing is ever trimmed.</source>
        <translation>El tope de encendido de %1 es menor que el encendido base de %2: donde el temporizador respeta el tope, los paneles reciben %3 menos de agua en cada encendido; donde respeta el base, nunca se corrige nada.</translation>
    </message>
    <message>
        <source>Set the base on-time to %1 and the ceiling to %2, as advised.</source>
        <translation>Ponga el encendido base en %1 y el tope en %2, como se recomienda.</translation>
    </message>
    <message>
        <source>Raise the ceiling to the base, %1, or above.</source>
        <translation>Suba el tope al encendido base, %1, o más.</translation>
    </message>
    <message>
        <source>Runs of up to %1 in %2 leave the pump a rest of %3, shorter than %4: it is started %5 times an hour to save %6 of pumping, and wears by it.</source>
        <translation>Encendidos de hasta %1 en %2 dejan a la bomba un descanso de %3, más corto que %4: arranca %5 veces por hora para ahorrar %6 de bombeo, y se desgasta con eso.</translation>
    </message>
    <message>
        <source>Leave a rest of at least %1, or let the pump run without rest.</source>
        <translation>Deje un descanso de al menos %1, o haga trabajar la bomba sin descanso.</translation>
    </message>
    <message>
        <source>A period of %1 starts the pump %2 times an hour, %3 more than one of %4: that many times more the header is filled anew, %5 of pumping that wets no pad.</source>
        <translation>Un periodo de %1 arranca la bomba %2 veces por hora, %3 más que uno de %4: esas veces más se llena de nuevo el distribuidor, %5 de bombeo que no moja ningún panel.</translation>
    </message>
    <message>
        <source>A period of %1 starts the pump %2 times an hour, %3 more than one of %4: that many times more the header is filled anew, which wets no pad.</source>
        <translation>Un periodo de %1 arranca la bomba %2 veces por hora, %3 más que uno de %4: esas veces más se llena de nuevo el distribuidor, lo que no moja ningún panel.</translation>
    </message>
    <message>
        <source>Lengthen the period to between %1 and %2.</source>
        <translation>Alargue el periodo a entre %1 y %2.</translation>
    </message>
    <message>
        <source>In a period of %1 the pads of %2 are without water for %3; nobody has timed whether they stay wet that long.</source>
        <translation>En un periodo de %1 los paneles de %2 están sin agua %3; nadie ha medido si quedan mojados tanto tiempo.</translation>
    </message>
    <message>
        <source>Time the dry-out, or a wet start where pads can&apos;t be dried; until then a period of at most %1.</source>
        <translation>Tome el tiempo de secado, o un arranque en mojado donde los paneles no se pueden secar; hasta entonces, un periodo de %1 como máximo.</translation>
    </message>
    <message>
        <source>This timer holds steps of %1, so that %2 of %3 is not what runs: one of the two was misread, or the timer rounds, by up to %4.</source>
        <translation>Este temporizador admite pasos de %1, así que %2 de %3 no es lo que se cumple: uno de los dos se leyó mal, o el temporizador redondea, hasta en %4.</translation>
    </message>
    <message>
        <source>Read both again at the timer; to set it, %1 is the next longer it can hold.</source>
        <translation>Lea los dos otra vez en el temporizador; para ponerlo, %1 es el siguiente más largo que admite.</translation>
    </message>
    <message>
        <source>The pump is meant to run without rest, but a run of %1 in %2 lets it rest %3 in every hour.</source>
        <translation>La bomba debe trabajar sin descanso, pero un encendido de %1 en %2 la deja descansar %3 en cada hora.</translation>
    </message>
    <message>
        <source>Set the on-time to %1, so that a run lasts the whole period, or take back that it is meant so.</source>
        <translation>Ponga el tiempo de encendido en %1, para que un encendido dure todo el periodo, o quite la indicación de que debe ser así.</translation>
    </message>
    <message>
        <source>evaporation alone</source>
        <translation>solo evaporación</translation>
    </message>
    <message>
        <source>evaporation and bleed</source>
        <translation>evaporación y purga</translation>
    </message>
    <message>
        <source>At every stop of %1 at least %2 run back, but above the working level the sump takes only %3: %4 run over each time, and are made up again.</source>
        <translation>En cada paro de %1 regresan al menos %2, pero por encima del nivel de trabajo el tanque recibe solo %3: cada vez se derraman %4, y se reponen de nuevo.</translation>
    </message>
    <message>
        <source>Set the float lower; if the pump then draws air at a start, the sump is too small.</source>
        <translation>Ponga más bajo el flotador; si la bomba entonces aspira aire en un arranque, el tanque es demasiado pequeño.</translation>
    </message>
    <message>
        <source>A start of %1 from dry pads takes %2 out of a sump of %3; only the make-up brings the missing %4 in time.</source>
        <translation>Un arranque de %1 con paneles secos saca %2 de un tanque de %3; solo la reposición trae a tiempo los %4 que faltan.</translation>
    </message>
    <message>
        <source>See that the make-up is open and at full flow before a dry start.</source>
        <translation>Vea que la reposición esté abierta y a pleno caudal antes de un arranque en seco.</translation>
    </message>
    <message>
        <source>A start of %1 from dry pads takes %2 out of a sump of %3: with %4 still missing it draws air, and the far end stays dry.</source>
        <translation>Un arranque de %1 con paneles secos saca %2 de un tanque de %3: cuando todavía faltan %4 aspira aire, y el extremo lejano queda seco.</translation>
    </message>
    <message>
        <source>Raise the float as far as what runs back allows, start in two steps, or use a larger sump.</source>
        <translation>Suba el flotador hasta donde lo permita lo que regresa, arranque en dos pasos, o use un tanque más grande.</translation>
    </message>
    <message>
        <source>The make-up of %1 brings %2; the design hour asks for %4 (%3), so %5 is missing</source>
        <translation>La reposición de %1 trae %2; la hora de diseño pide %4 (%3), así que falta %5</translation>
    </message>
    <message>
        <source>%1, and the sump empties while the birds need it most.</source>
        <translation>%1, y el tanque se vacía mientras las aves más lo necesitan.</translation>
    </message>
    <message>
        <source>Open the make-up valve fully and clean its screen; then a larger valve or a second line, by whoever may work on the water supply.</source>
        <translation>Abra del todo la válvula de reposición y limpie su malla; luego una válvula más grande o una segunda línea, por quien esté autorizado a trabajar en el suministro de agua.</translation>
    </message>
    <message>
        <source>%1: a full sump lasts %2 from there, then the pump draws air.</source>
        <translation>%1: un tanque lleno dura %2 desde ahí, luego la bomba aspira aire.</translation>
    </message>
    <message>
        <source>Should the make-up of %1 fail at the design hour, its sump of %2 lasts %3 against %4 of %5; then the pads dry and the house heats up.</source>
        <translation>Si la reposición de %1 fallara en la hora de diseño, su tanque de %2 dura %3 contra %4 de %5; luego los paneles se secan y la caseta se calienta.</translation>
    </message>
    <message>
        <source>Put a low-level alarm into the sump that reaches somebody within that time.</source>
        <translation>Ponga en el tanque una alarma de nivel bajo que le llegue a alguien dentro de ese tiempo.</translation>
    </message>
    <message>
        <source>Below the lowest house temperature of %1 the pads are off, so that they never start at %2 as set: birds wait another %3.</source>
        <translation>Por debajo de la temperatura mínima de la caseta, de %1, los paneles están apagados, así que nunca arrancan a %2 como se ajustó: las aves esperan otros %3.</translation>
    </message>
    <message>
        <source>Start and lowest house temperature are both %1: pads go off as soon as they cool, and on and off again with every tenth of a degree.</source>
        <translation>La temperatura de arranque y la mínima de la caseta son las dos %1: los paneles se apagan en cuanto enfrían, y se encienden y apagan otra vez con cada décima de grado.</translation>
    </message>
    <message>
        <source>Set the lowest house temperature below the start temperature of %1, by as much as the grower wants the pads to hold.</source>
        <translation>Ponga la temperatura mínima de la caseta por debajo de la temperatura de arranque de %1, con la diferencia que el granjero quiera que los paneles aguanten encendidos.</translation>
    </message>
    <message>
        <source>Pads may start at %1, %2 below the target of %3: they wet and cool a house that the controller is still warming.</source>
        <translation>Los paneles pueden arrancar a %1, %2 por debajo del objetivo de %3: mojan y enfrían una caseta que el controlador todavía está calentando.</translation>
    </message>
    <message>
        <source>Set the start temperature above the target, high enough for all tunnel fans to be on first.</source>
        <translation>Ponga la temperatura de arranque por encima del objetivo, bastante alta para que antes estén encendidos todos los ventiladores de túnel.</translation>
    </message>
    <message>
        <source>Pads may start at %1 with birds of %2 days: air then comes in at %3, wet and fast, and chills them.</source>
        <translation>Los paneles pueden arrancar a %1 con aves de %2 días: el aire entra entonces a %3, húmedo y rápido, y las enfría demasiado.</translation>
    </message>
    <message>
        <source>Pads may start at %1 with birds of %2 days: air comes in wet and fast, and chills them.</source>
        <translation>Los paneles pueden arrancar a %1 con aves de %2 días: el aire entra húmedo y rápido, y las enfría demasiado.</translation>
    </message>
    <message>
        <source>Leave the pads off but against heat, and agree with the grower from which house temperature on, above %1, that is; from %2 days on the published start holds.</source>
        <translation>Deje los paneles apagados, salvo contra el calor, y acuerde con el granjero desde qué temperatura de la caseta, por encima de %1, es eso; desde %2 días vale el arranque publicado.</translation>
    </message>
    <message>
        <source>When trimming has brought the run down to %1: %2</source>
        <translation>Cuando la corrección ha bajado el encendido a %1: %2</translation>
    </message>
    <message>
        <source>%1 Take out the trim rows that shorten the run: the base is the shortest that serves.</source>
        <translation>%1 Quite las filas de corrección que acortan el encendido: el base es el más corto que sirve.</translation>
    </message>
    <message>
        <source>Set the on-time to %1 and the period to %2, as advised.</source>
        <translation>Ponga el tiempo de encendido en %1 y el periodo en %2, como se recomienda.</translation>
    </message>
    <message>
        <source>One row is enough: %1 at %2 above target, as advised.</source>
        <translation>Basta una fila: %1 a %2 sobre el objetivo, como se recomienda.</translation>
    </message>
    <message>
        <source>Trim row %1 at %2 above target does not stand above row %3 at %4: one of them is never reached, and which is open.</source>
        <translation>La fila de corrección %1, a %2 sobre el objetivo, no queda por encima de la fila %3, a %4: una de ellas nunca se alcanza, y no se sabe cuál.</translation>
    </message>
    <message>
        <source>Put the rows in order, each at more degrees above target than the one before, or take one out.</source>
        <translation>Ponga las filas en orden, cada una a más grados sobre el objetivo que la anterior, o quite una.</translation>
    </message>
    <message>
        <source>From %1 above target on, a review gives the on-time %2 less than at %3: the hotter the house, the less its pads get.</source>
        <translation>Desde %1 sobre el objetivo, una revisión da al tiempo de encendido %2 menos que a %3: cuanto más caliente la caseta, menos reciben sus paneles.</translation>
    </message>
    <message>
        <source>Let no row change the on-time by less than a cooler one.</source>
        <translation>Ninguna fila debe cambiar el tiempo de encendido menos que una fila de menos grados.</translation>
    </message>
    <message>
        <source>it is shorter than the %1 that water needs to the far end, which then stays dry</source>
        <translation>es más corto que los %1 que el agua necesita hasta el extremo lejano, que entonces queda seco</translation>
    </message>
    <message>
        <source>nothing is left of it</source>
        <translation>no queda nada de él</translation>
    </message>
    <message>
        <source>A trim row takes %1 off the on-time, at every review again: after %2 of them, in %3, %4.</source>
        <translation>Una fila de corrección quita %1 al tiempo de encendido, otra vez en cada revisión: después de %2 de ellas, en %3, %4.</translation>
    </message>
    <message>
        <source>A trim row takes %1 off the on-time, at every review again: after %2 of them %3.</source>
        <translation>Una fila de corrección quita %1 al tiempo de encendido, otra vez en cada revisión: después de %2 de ellas, %3.</translation>
    </message>
    <message>
        <source>Take out the trim rows that take time off, and let the base be the shortest run; they may stay only where the timer is known never to go below its base.</source>
        <translation>Quite las filas de corrección que restan tiempo, y que el base sea el encendido más corto; pueden quedarse solo donde se sabe que el temporizador nunca baja de su base.</translation>
    </message>
    <message>
        <source>A trim row of %1 takes the on-time from base to ceiling, %2, at one review: %3 more pumping in every hour, or none, and nothing between.</source>
        <translation>Una fila de corrección de %1 lleva el tiempo de encendido del base al tope, %2, en una sola revisión: %3 más de bombeo en cada hora, o nada, y nada entre los dos.</translation>
    </message>
    <message>
        <source>A trim row of %1 takes the on-time from base to ceiling, %2, at one review: nothing between is ever used.</source>
        <translation>Una fila de corrección de %1 lleva el tiempo de encendido del base al tope, %2, en una sola revisión: nunca se usa nada entre los dos.</translation>
    </message>
    <message>
        <source>Take steps of about %1.</source>
        <translation>Tome pasos de unos %1.</translation>
    </message>
    <message>
        <source>A trim row adds %1 from %2 above target on, within the %3 that a house wavers about its target: the on-time climbs although the house is as it should be.</source>
        <translation>Una fila de corrección suma %1 desde %2 sobre el objetivo, dentro de los %3 que una caseta oscila alrededor de su objetivo: el tiempo de encendido sube aunque la caseta está como debe.</translation>
    </message>
    <message>
        <source>Begin to trim at %1 above target or more.</source>
        <translation>Empiece a corregir a %1 sobre el objetivo o más.</translation>
    </message>
    <message>
        <source>The on-time is reviewed every %1, before the house has answered the last change (%2): it climbs to its ceiling within %3, needed or not.</source>
        <translation>El tiempo de encendido se revisa cada %1, antes de que la caseta haya respondido al último cambio (%2): sube a su tope en %3, haga falta o no.</translation>
    </message>
    <message>
        <source>The on-time is reviewed every %1, before the house has answered the last change (%2): it is changed too often and too far.</source>
        <translation>El tiempo de encendido se revisa cada %1, antes de que la caseta haya respondido al último cambio (%2): se cambia demasiado seguido y demasiado.</translation>
    </message>
    <message>
        <source>Review it every %1.</source>
        <translation>Revíselo cada %1.</translation>
    </message>
    <message>
        <source>The on-time is reviewed every %1, which is no whole number of periods of %2: reviews fall into runs, and how many runs see one change differs.</source>
        <translation>El tiempo de encendido se revisa cada %1, que no es un número entero de periodos de %2: las revisiones caen dentro de los encendidos, y varía cuántos encendidos ven un mismo cambio.</translation>
    </message>
    <message>
        <source>Raise the on-time to %1 in this period.</source>
        <translation>Suba el tiempo de encendido a %1 en este periodo.</translation>
    </message>
    <message>
        <source>a wet pad begins to dry there after %1, and the air comes in up to %2 warmer</source>
        <translation>un panel mojado empieza a secarse ahí después de %1, y el aire entra hasta %2 más caliente</translation>
    </message>
    <message>
        <source>a wet pad begins to dry there after %1</source>
        <translation>un panel mojado empieza a secarse ahí después de %1</translation>
    </message>
    <message>
        <source>it dries out there, and the air comes in up to %1 warmer</source>
        <translation>se seca ahí, y el aire entra hasta %1 más caliente</translation>
    </message>
    <message>
        <source>it dries out there</source>
        <translation>se seca ahí</translation>
    </message>
    <message>
        <source>A run of %1 reaches the far end of %2 but brings too little: at the design hour %3 of supply lack in every period of %4, so that %5.</source>
        <translation>Un encendido de %1 llega al extremo lejano de %2 pero lleva muy poco: en la hora de diseño faltan %3 de suministro en cada periodo de %4, de modo que %5.</translation>
    </message>
    <message>
        <source>A run of %1 reaches the far end of %2, but at the design hour up to %3 of supply lack in every period of %4, by how the pad dries towards the end: it stays wet for sure from %5 on only.</source>
        <translation>Un encendido de %1 llega al extremo lejano de %2, pero en la hora de diseño faltan hasta %3 de suministro en cada periodo de %4, según cómo se seca el panel hacia el final: queda mojado con seguridad solo desde %5.</translation>
    </message>
    <message>
        <source>A run of %1 brings back what evaporates from %2 in %3 at the design hour, which takes %4, but margin and uncertainty ask for %5.</source>
        <translation>Un encendido de %1 devuelve lo que se evapora de %2 en %3 en la hora de diseño, para lo que hacen falta %4, pero margen e incertidumbre piden %5.</translation>
    </message>
    <message>
        <source>At the design hour the far end of %1 gets only %2 of what it could evaporate: even with the pump running without rest it stays dry in part, and the air comes in up to %3 warmer.</source>
        <translation>En la hora de diseño el extremo lejano de %1 recibe solo %2 de lo que podría evaporar: incluso con la bomba trabajando sin descanso queda seco en parte, y el aire entra hasta %3 más caliente.</translation>
    </message>
    <message>
        <source>At the design hour the far end of %1 gets only %2 of what it could evaporate: even with the pump running without rest it stays dry in part.</source>
        <translation>En la hora de diseño el extremo lejano de %1 recibe solo %2 de lo que podría evaporar: incluso con la bomba trabajando sin descanso queda seco en parte.</translation>
    </message>
    <message>
        <source>Bring more water: clean filter and outlets, then a larger pump, a second feed, or fewer metres of pad on this one. No setting helps; meanwhile run without rest.</source>
        <translation>Lleve más agua: filtro y orificios limpios, luego una bomba más grande, una segunda alimentación, o menos metros de panel en esta. Ningún ajuste ayuda; mientras tanto, trabaje sin descanso.</translation>
    </message>
    <message>
        <source>By one farm&apos;s figure (Griggs, MS thesis, Auburn University) that would be up to %1 of scale in an hour like the design hour.</source>
        <translation>Según la cifra de una granja (Griggs, MS thesis, Auburn University) eso sería hasta %1 de sarro en una hora como la de diseño.</translation>
    </message>
    <message>
        <source>The sump holds %1 times the salts of the make-up, and its Langelier index of +%2 says that it lays down scale: pads clog and wear out early.</source>
        <translation>El tanque tiene %1 veces las sales de la reposición, y su índice de Langelier de +%2 dice que deja sarro: los paneles se tapan y se gastan pronto.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>The bleed is open too wide.</source>
        <translation>La purga está demasiado abierta.</translation>
    </message>
    <message>
        <source>Catch the bleed in a vessel for a minute.</source>
        <translation>Capte la purga en un recipiente durante un minuto.</translation>
    </message>
    <message>
        <source>The sump runs over: a float set too high, or one that sticks.</source>
        <translation>El tanque se derrama: un flotador demasiado alto, o que se pega.</translation>
    </message>
    <message>
        <source>Watch the overflow through a stop of the pump.</source>
        <translation>Observe el rebose durante un paro de la bomba.</translation>
    </message>
    <message>
        <source>A leak, or water that is blown off the pads.</source>
        <translation>Una fuga, o agua que el aire arranca de los paneles.</translation>
    </message>
    <message>
        <source>Look for wet ground along pipe, gutter and pads.</source>
        <translation>Busque suelo mojado a lo largo de tubo, canaleta y paneles.</translation>
    </message>
    <message>
        <source>The sump holds hardly more salts than the make-up (%1 times): it was just filled, or it loses more water than it evaporates.</source>
        <translation>El tanque apenas tiene más sales que la reposición (%1 veces): se acaba de llenar, o pierde más agua de la que evapora.</translation>
    </message>
    <message>
        <source>Test it again after a day of running; if it stands, find where it goes.</source>
        <translation>Analícelo otra vez después de un día de trabajo; si se confirma, busque a dónde va.</translation>
    </message>
    <message>
        <source>The sump holds only %1 times the salts of the make-up, where at least %2 times is published: of the water let out, %3 are wasted in an hour like the design hour.</source>
        <translation>El tanque tiene solo %1 veces las sales de la reposición, donde lo publicado es al menos %2 veces: del agua que se deja salir, se desperdician %3 en una hora como la de diseño.</translation>
    </message>
    <message>
        <source>Bleed no more than %1 at the design hour, leaks and drift counted in.</source>
        <translation>No purgue más de %1 en la hora de diseño, contando fugas y arrastre.</translation>
    </message>
    <message>
        <source>The sump holds only %1 times the salts of the make-up, where at least %2 times is published: %3 of the water let out is wasted.</source>
        <translation>El tanque tiene solo %1 veces las sales de la reposición, donde lo publicado es al menos %2 veces: se desperdicia %3 del agua que se deja salir.</translation>
    </message>
    <message>
        <source>Bleed less, and find where else water goes.</source>
        <translation>Purgue menos, y busque a dónde más se va el agua.</translation>
    </message>
    <message>
        <source>Bleed %1 at the design hour, leaks and drift counted in: that holds it at %2 times, where the index is 0 at this pH.</source>
        <translation>Purgue %1 en la hora de diseño, contando fugas y arrastre: eso lo mantiene en %2 veces, donde el índice es 0 con este pH.</translation>
    </message>
    <message>
        <source>Bleed more, down to %1 times, where the index is 0 at this pH.</source>
        <translation>Purgue más, hasta bajar a %1 veces, donde el índice es 0 con este pH.</translation>
    </message>
    <message>
        <source>Bleeding alone does not hold this water: keep the pads wet while they are in use, rinse them, and ask a water treatment firm before anything is added. Never mix acid with bleach.</source>
        <translation>La sola purga no controla esta agua: mantenga mojados los paneles mientras se usan, enjuáguelos, y consulte a una empresa de tratamiento de agua antes de agregar algo. Nunca mezcle ácido con cloro (blanqueador).</translation>
    </message>
    <message>
        <source>The sump&apos;s pH is %1, below the published %2 to %3: it eats metal, and softens the pads&apos; paper.</source>
        <translation>El pH del tanque es %1, por debajo de lo publicado, %2 a %3: corroe el metal y ablanda el papel de los paneles.</translation>
    </message>
    <message>
        <source>The sump&apos;s pH is %1, above the published %2 to %3: the water lays down scale more readily.</source>
        <translation>El pH del tanque es %1, por encima de lo publicado, %2 a %3: el agua deja sarro más fácilmente.</translation>
    </message>
    <message>
        <source>Stop dosing acid, drain and refill, and test again.</source>
        <translation>Deje de dosificar ácido, vacíe y llene de nuevo, y analice otra vez.</translation>
    </message>
    <message>
        <source>Bleed more, and test again; acid only by someone trained for it, and never with bleach.</source>
        <translation>Purgue más, y analice otra vez; ácido solo por alguien capacitado para eso, y nunca con cloro (blanqueador).</translation>
    </message>
    <message>
        <source>in the weather of the reading</source>
        <translation>con el clima de la lectura</translation>
    </message>
    <message>
        <source>Set the on-time to at least %1 in this period, or shorten the period.</source>
        <translation>Ponga el tiempo de encendido en al menos %1 en este periodo, o acorte el periodo.</translation>
    </message>
    <message>
        <source>Shorten the period.</source>
        <translation>Acorte el periodo.</translation>
    </message>
    <message>
        <source>The far end of %1 is without water for %2 in every period; nobody has seen it stay wet longer than %3 %4, so that it stays wet is not proven.</source>
        <translation>El extremo lejano de %1 está sin agua %2 en cada periodo; nadie lo ha visto quedar mojado más de %3 %4, así que no está probado que quede mojado.</translation>
    </message>
    <message>
        <source>The far end of %1 is without water for %2 in every period but stays wet for %3 %4: it is dry for %5 before water comes back, dries %6 times an hour, cools less and scales.</source>
        <translation>El extremo lejano de %1 está sin agua %2 en cada periodo pero queda mojado %3 %4: está seco %5 antes de que vuelva el agua, se seca %6 veces por hora, enfría menos y forma sarro.</translation>
    </message>
    <message>
        <source>%1 Up to %2 dry on the design day, of %3 in which pads are called for.</source>
        <translation>%1 Hasta %2 seco en el día de diseño, de %3 en que se piden los paneles.</translation>
    </message>
    <message>
        <source>Whether the far end of %1 dries in the %2 without water is too close to call: it stays wet for %3 ± %4 %5.</source>
        <translation>Si el extremo lejano de %1 se seca en los %2 sin agua es muy justo para decidir: queda mojado %3 ± %4 %5.</translation>
    </message>
    <message>
        <source>The far end of %1 is without water for %2 of the %3 that it stays wet %4: a weak outlet or a hotter day leaves a part dry.</source>
        <translation>El extremo lejano de %1 está sin agua %2 de los %3 que queda mojado %4: un orificio débil o un día más caluroso deja una parte seca.</translation>
    </message>
    <message>
        <source>Nothing to do: readings from a dry pad are there and are used (%1 of them).</source>
        <translation>Nada que hacer: hay lecturas desde un panel seco y se usan (son %1).</translation>
    </message>
    <message>
        <source>Nothing to do for a cycle: the wet start serves; read wet-through when the pad can be dried.</source>
        <translation>Nada que hacer para un ciclo: sirve el arranque en mojado; lea el mojado completo cuando el panel se pueda secar.</translation>
    </message>
    <message>
        <source>Dry the pad with the fans running and time it again; where birds and weather forbid that, time a wet start.</source>
        <translation>Seque el panel con los ventiladores trabajando y tome el tiempo otra vez; donde aves y clima no lo permiten, tome un arranque en mojado.</translation>
    </message>
    <message>
        <source>The pad of %1 was not dry when wet-through was read (%2): such a reading is too short, it is kept and not used.</source>
        <translation>El panel de %1 no estaba seco cuando se leyó el mojado completo (%2): esa lectura es demasiado corta, se guarda y no se usa.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>one that is not here</source>
        <translation>uno que no está aquí</translation>
    </message>
    <message>
        <source>%1 as found</source>
        <translation>%1 como se encontró</translation>
    </message>
    <message>
        <source>%1 as left</source>
        <translation>%1 como se dejó</translation>
    </message>
    <message>
        <source>%1, %2 %3: %4</source>
        <translation>%1, %2 %3: %4</translation>
    </message>
    <message>
        <source>%1: ticked again</source>
        <translation>%1: marcado otra vez</translation>
    </message>
    <message>
        <source>%1: not ticked any more</source>
        <translation>%1: ya no marcado</translation>
    </message>
    <message>
        <source>A reading that was set aside counts again</source>
        <translation>Una lectura que estaba apartada vuelve a contar</translation>
    </message>
    <message>
        <source>A reading is set aside again</source>
        <translation>Una lectura se aparta otra vez</translation>
    </message>
    <message>
        <source>%1: %2 taken out</source>
        <translation>%1: se quitó %2</translation>
    </message>
    <message>
        <source>%1: %2 put back in</source>
        <translation>%1: se volvió a poner %2</translation>
    </message>
    <message>
        <source>%1: %2 back to %3</source>
        <translation>%1: %2 vuelve a %3</translation>
    </message>
    <message>
        <source>%1, changed places: %2</source>
        <translation>%1, datos cambiados: %2</translation>
    </message>
    <message>
        <source>%1; other places: %2</source>
        <translation>%1; otros datos: %2</translation>
    </message>
    <message>
        <source>One period of %1 to scale, at its slowest bank, %2</source>
        <translation>Un periodo de %1 a escala, en su banco más lento, %2</translation>
    </message>
    <message>
        <source>One period of %1 to scale; no bank was timed</source>
        <translation>Un periodo de %1 a escala; no se tomó el tiempo de ningún banco</translation>
    </message>
    <message>
        <source>%1: on-time from a full header, and no fill time is known</source>
        <translation>%1: tiempo de encendido desde el distribuidor lleno, y no se conoce el tiempo de llenado</translation>
    </message>
    <message>
        <source>%1: period or on-time not entered, or outside what is usual</source>
        <translation>%1: periodo o tiempo de encendido no ingresado, o fuera de lo usual</translation>
    </message>
    <message>
        <source>found</source>
        <translation>encontrado</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>recomendado</translation>
    </message>
    <message>
        <source>left</source>
        <translation>dejado</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>no ingresado</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>no medido</translation>
    </message>
    <message>
        <source>Commissioning sheet: cooling pads, pumps and timers</source>
        <translation>Hoja de puesta en marcha: paneles evaporativos, bombas y temporizadores</translation>
    </message>
    <message>
        <source>Service firm: %1. Farm: %2. House: %3</source>
        <translation>Empresa de servicio: %1. Granja: %2. Caseta: %3</translation>
    </message>
    <message>
        <source>whole house</source>
        <translation>toda la caseta</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>NOT done</source>
        <translation>NO hecho</translation>
    </message>
    <message>
        <source>Findings on what was found</source>
        <translation>Hallazgos sobre lo encontrado</translation>
    </message>
    <message>
        <source>Settings found: not entered, so none of them was checked.</source>
        <translation>Ajustes encontrados: no ingresados, así que no se revisó ninguno.</translation>
    </message>
    <message>
        <source>None by the rules of this program.</source>
        <translation>Ninguno según las reglas de este programa.</translation>
    </message>
    <message>
        <source>Findings that remain on what was left</source>
        <translation>Hallazgos que quedan sobre lo dejado</translation>
    </message>
    <message>
        <source>Settings left: not entered, so none of them was checked.</source>
        <translation>Ajustes dejados: no ingresados, así que no se revisó ninguno.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Checked before the work</source>
        <translation>Revisado antes del trabajo</translation>
    </message>
    <message>
        <source>Checked before leaving</source>
        <translation>Revisado antes de irse</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>No hecho: %1</translation>
    </message>
    <message>
        <source>None entered.</source>
        <translation>Ninguno ingresado.</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Firmas</translation>
    </message>
    <message>
        <source>For the service firm</source>
        <translation>Por la empresa de servicio</translation>
    </message>
    <message>
        <source>For the grower</source>
        <translation>Por el granjero</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>%1, from the %2</source>
        <translation>%1, desde la %2</translation>
    </message>
    <message>
        <source>fill %1, wet-through %2, dry-out %3</source>
        <translation>llenado %1, mojado completo %2, secado %3</translation>
    </message>
    <message>
        <source>%1 ± %2, %3</source>
        <translation>%1 ± %2, %3</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Step of on-time</source>
        <translation>Paso del encendido</translation>
    </message>
    <message>
        <source>Step of period</source>
        <translation>Paso del periodo</translation>
    </message>
    <message>
        <source>%1, mean of %2 points from %3 to %4</source>
        <translation>%1, promedio de %2 puntos de %3 a %4</translation>
    </message>
    <message>
        <source>At the bank</source>
        <translation>En el banco</translation>
    </message>
    <message>
        <source>Behind the pad</source>
        <translation>Detrás del panel</translation>
    </message>
    <message>
        <source>Air speed at the face</source>
        <translation>Velocidad del aire en la cara</translation>
    </message>
    <message>
        <source>Pressure drop</source>
        <translation>Caída de presión</translation>
    </message>
    <message>
        <source>Water for each length</source>
        <translation>Agua por cada largo</translation>
    </message>
    <message>
        <source>Evenness of the header, low quarter (worked out)</source>
        <translation>Uniformidad del distribuidor, cuarto inferior (calculada)</translation>
    </message>
    <message>
        <source>Date of work</source>
        <translation>Fecha del trabajo</translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation>Fecha de emisión</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>draft, not signed</source>
        <translation>borrador, sin firmar</translation>
    </message>
    <message>
        <source>This sheet is a correction and replaces sheet %1.</source>
        <translation>Esta hoja es una corrección y reemplaza la hoja %1.</translation>
    </message>
    <message>
        <source>House, pumps and banks</source>
        <translation>Caseta, bombas y bancos</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>Agreed: longest time the pads may be off</source>
        <translation>Acordado: tiempo máximo con los paneles apagados</translation>
    </message>
    <message>
        <source>Agreed: house temperature at which the test stops</source>
        <translation>Acordado: temperatura de la caseta a la que se detiene la prueba</translation>
    </message>
    <message>
        <source>%1 ± %2, runs: %3</source>
        <translation>%1 ± %2, encendidos: %3</translation>
    </message>
    <message>
        <source>at least %1, within %2</source>
        <translation>al menos %1, tolerancia %2</translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <translation>%1, tolerancia %2</translation>
    </message>
    <message>
        <source>%1 to %2, within %3</source>
        <translation>%1 a %2, tolerancia %3</translation>
    </message>
    <message>
        <source>%1 ± %2, at most %3 later</source>
        <translation>%1 ± %2, como máximo %3 después</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>antes de %1</translation>
    </message>
    <message>
        <source>Watched</source>
        <translation>Observado</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Ajuste</translation>
    </message>
    <message>
        <source>Seen ± U (95 %)</source>
        <translation>Visto ± U (95&#xa0;%)</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Esperado</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Tolerances, all assumed: period and on-time %1, %2 of what is set or half a step, whichever is most; water at the far end %3 or %4 later than read; drip back %5 or %6 later than the model expects in the weather of the readings, and before the stop.</source>
        <translation>Tolerancias, todas supuestas: periodo y tiempo de encendido %1, %2 de lo ajustado o medio paso, lo que sea mayor; agua en el extremo lejano %3 o %4 después de lo leído; regreso del goteo %5 o %6 después de lo que espera el modelo con el clima de las lecturas, y antes del paro.</translation>
    </message>
    <message>
        <source>Not seen: %1</source>
        <translation>No visto: %1</translation>
    </message>
    <message>
        <source>Likely cause %1: %2 Next check: %3</source>
        <translation>Causa probable %1: %2 Revise luego: %3</translation>
    </message>
    <message>
        <source>Not done: the house has no timer.</source>
        <translation>No hecho: la caseta no tiene temporizador.</translation>
    </message>
    <message>
        <source>used, but stands out from the others</source>
        <translation>usada, pero se aparta de las demás</translation>
    </message>
    <message>
        <source>used</source>
        <translation>usada</translation>
    </message>
    <message>
        <source>not used: set aside, &quot;%1&quot;</source>
        <translation>no usada: apartada, &quot;%1&quot;</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>no indicado</translation>
    </message>
    <message>
        <source>on</source>
        <translation>activos</translation>
    </message>
    <message>
        <source>off</source>
        <translation>parados</translation>
    </message>
    <message>
        <source>not limited</source>
        <translation>sin límite</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>más de %1</translation>
    </message>
    <message>
        <source>Wet-through less fill</source>
        <translation>Mojado completo menos llenado</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>difiere</translation>
    </message>
    <message>
        <source>same within uncertainty</source>
        <translation>igual dentro de la incertidumbre</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation>No se tomó ningún tiempo.</translation>
    </message>
    <message>
        <source>Timed by hand on this program&apos;s stopwatch. Mean of the readings used, ± expanded uncertainty U = k u for 95 % (JCGM 100:2008): spread, hand %1 (Am. J. Phys. 87(2):110, 2019), seeing a drip or a dry patch %2 (assumed), a start by signal %3 (assumed).</source>
        <translation>Tiempos tomados a mano con el cronómetro de este programa. Promedio de las lecturas usadas, ± incertidumbre expandida U = k u para 95&#xa0;% (JCGM 100:2008): dispersión, mano %1 (Am. J. Phys. 87(2):110, 2019), ver un goteo o una mancha seca %2 (supuesto), un arranque por señal %3 (supuesto).</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Pump switched by</source>
        <translation>Bomba accionada por</translation>
    </message>
    <message>
        <source>Fans</source>
        <translation>Vent.</translation>
    </message>
    <message>
        <source>Use</source>
        <translation>Uso</translation>
    </message>
    <message>
        <source>Times of each bank</source>
        <translation>Tiempos de cada banco</translation>
    </message>
    <message>
        <source>Readings used</source>
        <translation>Lecturas usadas</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Promedio</translation>
    </message>
    <message>
        <source>U (95 %)</source>
        <translation>U (95&#xa0;%)</translation>
    </message>
    <message>
        <source>k</source>
        <translation>k</translation>
    </message>
    <message>
        <source>Degrees of freedom</source>
        <translation>Grados de libertad</translation>
    </message>
    <message>
        <source>Spread from</source>
        <translation>Dispersión de</translation>
    </message>
    <message>
        <source>%1: wet-through was read with the fans now on, now off or not stated; it counts as off, which asks for more water.</source>
        <translation>%1: el mojado completo se leyó con los ventiladores a veces encendidos, a veces apagados o sin indicarlo; cuenta como apagados, lo que pide más agua.</translation>
    </message>
    <message>
        <source>Bank against bank</source>
        <translation>Banco contra banco</translation>
    </message>
    <message>
        <source>Against the shortest</source>
        <translation>Contra el más corto</translation>
    </message>
    <message>
        <source>Longer by</source>
        <translation>Más largo en</translation>
    </message>
    <message>
        <source>No two banks were timed in the same way: nothing to compare.</source>
        <translation>No hay dos bancos con el tiempo tomado de la misma manera: nada que comparar.</translation>
    </message>
    <message>
        <source>no advice</source>
        <translation>sin consejo</translation>
    </message>
    <message>
        <source>read: %1</source>
        <translation>leído: %1</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>Advised</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Dejado</translation>
    </message>
    <message>
        <source>from %1 above target: not entered</source>
        <translation>desde %1 sobre el objetivo: no ingresado</translation>
    </message>
    <message>
        <source>from %1 above target: %2 shorter</source>
        <translation>desde %1 sobre el objetivo: %2 más corto</translation>
    </message>
    <message>
        <source>from %1 above target: %2 longer</source>
        <translation>desde %1 sobre el objetivo: %2 más largo</translation>
    </message>
    <message>
        <source>no row</source>
        <translation>sin fila</translation>
    </message>
    <message>
        <source>Trim row %1</source>
        <translation>Fila de corrección %1</translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation>Fila %1: %2</translation>
    </message>
    <message>
        <source>%1 (cannot be held as advised)</source>
        <translation>%1 (no se admite como se recomienda)</translation>
    </message>
    <message>
        <source>%1 (cannot be held)</source>
        <translation>%1 (no se admite)</translation>
    </message>
    <message>
        <source>this timer has none</source>
        <translation>este temporizador no tiene</translation>
    </message>
    <message>
        <source>Labels, units and steps are those of %1. Its on-times count from a full header, the pump&apos;s runs from its start.</source>
        <translation>Etiquetas, unidades y pasos son los de %1. Sus tiempos de encendido cuentan desde el distribuidor lleno; los encendidos de la bomba, desde su arranque.</translation>
    </message>
    <message>
        <source>Labels, units and steps are those of %1.</source>
        <translation>Etiquetas, unidades y pasos son los de %1.</translation>
    </message>
    <message>
        <source>%1; worked out %2, rounded up</source>
        <translation>%1; calculado %2, redondeado hacia arriba</translation>
    </message>
    <message>
        <source>%1; worked out %2, rounded down</source>
        <translation>%1; calculado %2, redondeado hacia abajo</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>As found, advised and as left: %1 (%2)</source>
        <translation>Como se encontró, recomendado y como se dejó: %1 (%2)</translation>
    </message>
    <message>
        <source>Why it differs from the advice: %1</source>
        <translation>Por qué difiere de lo recomendado: %1</translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation>Por qué: %1</translation>
    </message>
    <message>
        <source>When to run pads</source>
        <translation>Cuándo usar los paneles</translation>
    </message>
    <message>
        <source>Best cycle</source>
        <translation>Mejor ciclo</translation>
    </message>
    <message>
        <source>Without rest</source>
        <translation>Sin descanso</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Supuesto</translation>
    </message>
    <message>
        <source>Nothing was assumed for the advice.</source>
        <translation>Nada se supuso para la recomendación.</translation>
    </message>
    <message>
        <source>Missing for the advice</source>
        <translation>Falta para la recomendación</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Llenado</translation>
    </message>
    <message>
        <source>Wet-through</source>
        <translation>Mojado completo</translation>
    </message>
    <message>
        <source>Run-off</source>
        <translation>Escurrimiento</translation>
    </message>
    <message>
        <source>Dry-out</source>
        <translation>Secado</translation>
    </message>
    <message>
        <source>Wet start: pump off</source>
        <translation>En mojado: bomba apagada</translation>
    </message>
    <message>
        <source>Wet start: drip returns</source>
        <translation>En mojado: vuelve el goteo</translation>
    </message>
    <message>
        <source>not used: set aside</source>
        <translation>no usada: apartada</translation>
    </message>
    <message>
        <source>not used: unverified, across a restart or a start that nobody saw</source>
        <translation>no usada: sin verificar, con un reinicio de por medio o un arranque que nadie vio</translation>
    </message>
    <message>
        <source>not used: marks in the wrong order</source>
        <translation>no usada: marcas en el orden equivocado</translation>
    </message>
    <message>
        <source>not used: longer than a day, a mark is missing</source>
        <translation>no usada: más larga que un día, falta una marca</translation>
    </message>
    <message>
        <source>not used: sooner than water can do it, or a second press</source>
        <translation>no usada: más pronto de lo que puede el agua, o una segunda pulsación</translation>
    </message>
    <message>
        <source>not used: pressed again, the first press counts</source>
        <translation>no usada: se pulsó otra vez, cuenta la primera pulsación</translation>
    </message>
    <message>
        <source>not used: already there when seen, an upper bound</source>
        <translation>no usada: ya estaba ahí cuando se vio, un límite superior</translation>
    </message>
    <message>
        <source>not used: the pad was not dry at the start, so it is too short</source>
        <translation>no usada: el panel no estaba seco al arrancar, así que es demasiado corta</translation>
    </message>
    <message>
        <source>not used: the fans were off</source>
        <translation>no usada: los ventiladores estaban apagados</translation>
    </message>
    <message>
        <source>not used: whether the fans ran was not stated</source>
        <translation>no usada: no se indicó si los ventiladores trabajaban</translation>
    </message>
    <message>
        <source>technician here</source>
        <translation>técnico aquí</translation>
    </message>
    <message>
        <source>technician, walked</source>
        <translation>técnico, caminó</translation>
    </message>
    <message>
        <source>helper on signal</source>
        <translation>ayudante con señal</translation>
    </message>
    <message>
        <source>timer at a minute</source>
        <translation>temporizador al minuto</translation>
    </message>
    <message>
        <source>these readings</source>
        <translation>estas lecturas</translation>
    </message>
    <message>
        <source>like readings of this visit</source>
        <translation>lecturas parecidas de esta visita</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supuesta</translation>
    </message>
    <message>
        <source>trimmed by temperature</source>
        <translation>corregido por temperatura</translation>
    </message>
    <message>
        <source>fixed interval</source>
        <translation>intervalo fijo</translation>
    </message>
    <message>
        <source>on demand</source>
        <translation>por demanda</translation>
    </message>
    <message>
        <source>Temperature sensor</source>
        <translation>Sensor de temperatura</translation>
    </message>
    <message>
        <source>Humidity sensor</source>
        <translation>Sensor de humedad</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>afuera</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation>en la caseta</translation>
    </message>
    <message>
        <source>behind the pad</source>
        <translation>detrás del panel</translation>
    </message>
    <message>
        <source>pump start</source>
        <translation>arranque de la bomba</translation>
    </message>
    <message>
        <source>a full header</source>
        <translation>distribuidor lleno</translation>
    </message>
    <message>
        <source>Fill: from pump start to water at the far end of the header.</source>
        <translation>Llenado: del arranque de la bomba al agua en el extremo lejano del distribuidor.</translation>
    </message>
    <message>
        <source>Wet-through: from pump start, pad dry, to an even drip under the pad farthest from the pump.</source>
        <translation>Mojado completo: del arranque de la bomba, con el panel seco, a un goteo parejo bajo el panel más alejado de la bomba.</translation>
    </message>
    <message>
        <source>Run-off: from pump stop to the end of dripping.</source>
        <translation>Escurrimiento: del paro de la bomba al final del goteo.</translation>
    </message>
    <message>
        <source>Dry-out: from pump stop to the first dry patch on the pad face, fans running.</source>
        <translation>Secado: del paro de la bomba a la primera mancha seca en la cara del panel, con los ventiladores trabajando.</translation>
    </message>
    <message>
        <source>Wet start, pump off: from a stop while the far end drips to the next start.</source>
        <translation>Arranque en mojado, bomba apagada: de un paro mientras el extremo lejano gotea al siguiente arranque.</translation>
    </message>
    <message>
        <source>Wet start, drip returns: from that start to an even drip at the far end.</source>
        <translation>Arranque en mojado, vuelve el goteo: de ese arranque a un goteo parejo en el extremo lejano.</translation>
    </message>
    <message>
        <source>%1: too few visits for a trend, %2 of %3.</source>
        <translation>%1: muy pocas visitas para una tendencia, %2 de %3.</translation>
    </message>
    <message>
        <source>%1: no trend is seen in %2 visits.</source>
        <translation>%1: no se ve tendencia en %2 visitas.</translation>
    </message>
    <message>
        <source>%1 rises by %2 a year, at 95 % by %3 to %4; %5 visits.</source>
        <translation>%1 sube %2 al año, al 95&#xa0;% de %3 a %4; %5 visitas.</translation>
    </message>
    <message>
        <source>%1 rises, by about %2 a year; %3 visits.</source>
        <translation>%1 sube, cerca de %2 al año; %3 visitas.</translation>
    </message>
    <message>
        <source>%1 falls by %2 a year, at 95 % by %3 to %4; %5 visits.</source>
        <translation>%1 baja %2 al año, al 95&#xa0;% de %3 a %4; %5 visitas.</translation>
    </message>
    <message>
        <source>%1 falls, by about %2 a year; %3 visits.</source>
        <translation>%1 baja, cerca de %2 al año; %3 visitas.</translation>
    </message>
    <message>
        <source>Fill time</source>
        <translation>Tiempo de llenado</translation>
    </message>
    <message>
        <source>Wetting time</source>
        <translation>Tiempo de mojado</translation>
    </message>
    <message>
        <source>Wet-through time</source>
        <translation>Tiempo de mojado completo</translation>
    </message>
    <message>
        <source>Flow into the header</source>
        <translation>Caudal hacia el distribuidor</translation>
    </message>
    <message>
        <source>Pad effectiveness</source>
        <translation>Eficiencia del panel</translation>
    </message>
    <message>
        <source>Drift and leaks, %1, already hold the salts of the sump at %2 times those of the make-up: no bleed is needed for %3 times.</source>
        <translation>El arrastre y las fugas, %1, ya mantienen las sales del tanque en %2 veces las de la reposición: para %3 veces no hace falta purga.</translation>
    </message>
    <message>
        <source>Published guidance lets the salts rise to at least %1 times those of the make-up (EnergyPlus Engineering Reference); %2 times bleeds more water.</source>
        <translation>La guía publicada deja subir las sales hasta al menos %1 veces las de la reposición (EnergyPlus Engineering Reference); %2 veces purga más agua.</translation>
    </message>
    <message>
        <source>A fill took only %1: take a larger vessel, so that each fill takes %2 to %3. The flow is uncertain by %4.</source>
        <translation>Un llenado tomó solo %1: use un recipiente más grande, para que cada llenado tome de %2 a %3. El caudal tiene una incertidumbre de %4.</translation>
    </message>
    <message>
        <source>The flow is uncertain by %1: catch at more outlets, or shut the make-up and time how fast the sump falls.</source>
        <translation>El caudal tiene una incertidumbre de %1: capte en más orificios, o cierre la reposición y tome el tiempo en que baja el tanque.</translation>
    </message>
    <message>
        <source>The flow is uncertain by %1, because the level fell by %2 only: let it fall further, as long as the pump stays under water and nothing comes back.</source>
        <translation>El caudal tiene una incertidumbre de %1, porque el nivel bajó solo %2: déjelo bajar más, mientras la bomba siga bajo el agua y no regrese nada.</translation>
    </message>
    <message>
        <source>The flow is uncertain by %1: measure the sump&apos;s area better, or let the level fall for longer.</source>
        <translation>El caudal tiene una incertidumbre de %1: mida mejor el área del tanque, o deje bajar el nivel más tiempo.</translation>
    </message>
    <message>
        <source>A vessel that fills in %1 is uncertain by %2: shut the make-up and time how fast the sump falls instead.</source>
        <translation>Un recipiente que se llena en %1 tiene una incertidumbre de %2: mejor cierre la reposición y tome el tiempo en que baja el tanque.</translation>
    </message>
    <message>
        <source>The flow is uncertain by %1: read the meter over a longer time, or shut the make-up and time how fast the sump falls.</source>
        <translation>El caudal tiene una incertidumbre de %1: lea el medidor durante más tiempo, o cierre la reposición y tome el tiempo en que baja el tanque.</translation>
    </message>
    <message>
        <source>Langelier index 0.0: the water is just saturated with calcium carbonate; it neither lays down scale nor dissolves it.</source>
        <translation>Índice de Langelier 0.0: el agua está justo saturada de carbonato de calcio; ni deja sarro ni lo disuelve.</translation>
    </message>
    <message>
        <source>Langelier index %1: the water holds more calcium carbonate than it can keep dissolved; it can lay down scale.</source>
        <translation>Índice de Langelier %1: el agua lleva más carbonato de calcio del que puede mantener disuelto; puede dejar sarro.</translation>
    </message>
    <message>
        <source>Langelier index %1: the water could dissolve more calcium carbonate; it lays down no such scale.</source>
        <translation>Índice de Langelier %1: el agua podría disolver más carbonato de calcio; no deja ese sarro.</translation>
    </message>
    <message>
        <source>Ryznar index %1: the lower it is, the more scale.</source>
        <translation>Índice de Ryznar %1: cuanto más bajo, más sarro.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>No cycle known</source>
        <translation>Sin ciclo conocido</translation>
    </message>
    <message>
        <source>The pump never rests</source>
        <translation>La bomba nunca descansa</translation>
    </message>
    <message>
        <source>%1 on, every %2</source>
        <translation>%1 encendida, cada %2</translation>
    </message>
    <message>
        <source>pad stays wet</source>
        <translation>panel sigue mojado</translation>
    </message>
    <message>
        <source>from a dry pad</source>
        <translation>desde un panel seco</translation>
    </message>
    <message>
        <source>header fills</source>
        <translation>se llena el distribuidor</translation>
    </message>
    <message>
        <source>pump runs, header full</source>
        <translation>bomba trabajando, distribuidor lleno</translation>
    </message>
    <message>
        <source>pad takes up water; pump end first, far end last</source>
        <translation>el panel toma agua; primero el extremo de la bomba, al final el lejano</translation>
    </message>
    <message>
        <source>wet through, drips</source>
        <translation>mojado por completo, gotea</translation>
    </message>
    <message>
        <source>pump off, still drips</source>
        <translation>bomba apagada, todavía gotea</translation>
    </message>
    <message>
        <source>pad rests</source>
        <translation>panel en descanso</translation>
    </message>
    <message>
        <source>first dry patch</source>
        <translation>primera mancha seca</translation>
    </message>
    <message>
        <source>on-time found</source>
        <translation>encendido encontrado</translation>
    </message>
    <message>
        <source>Remedy: %1</source>
        <translation>Remedio: %1</translation>
    </message>
    <message>
        <source>Likely, in this order: %1</source>
        <translation>Probable, en este orden: %1</translation>
    </message>
    <message>
        <source>Name, signature, date</source>
        <translation>Nombre, firma, fecha</translation>
    </message>
    <message>
        <source>Signed %1</source>
        <translation>Firmado %1</translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation>%1, revisión %2</translation>
    </message>
    <message>
        <source>DRAFT</source>
        <translation>BORRADOR</translation>
    </message>
    <message>
        <source>DRAFT, not signed</source>
        <translation>BORRADOR, sin firmar</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Nota: %1</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>Switched by</source>
        <translation>Accionada por</translation>
    </message>
    <message>
        <source>From the template.</source>
        <translation>De la plantilla.</translation>
    </message>
    <message>
        <source>what if</source>
        <translation>qué pasa si</translation>
    </message>
    <message>
        <source>left end</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right end</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation>Mantenimiento</translation>
    </message>
    <message>
        <source>What was measured is followed over the years from the last of these on.</source>
        <translation>Lo medido se sigue a lo largo de los años a partir del último de estos.</translation>
    </message>
    <message>
        <source>Outlets cleaned</source>
        <translation>Orificios limpiados</translation>
    </message>
    <message>
        <source>New pads</source>
        <translation>Paneles nuevos</translation>
    </message>
    <message>
        <source>New pump</source>
        <translation>Bomba nueva</translation>
    </message>
    <message>
        <source>Other work</source>
        <translation>Otro trabajo</translation>
    </message>
    <message>
        <source>What your pads need</source>
        <translation>Lo que necesitan sus paneles</translation>
    </message>
    <message>
        <source>Changed in the timer</source>
        <translation>Cambiado en el temporizador</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Nothing was changed in the timers.</source>
        <translation>No se cambió nada en los temporizadores.</translation>
    </message>
    <message>
        <source>And %1 more, on the commissioning sheet.</source>
        <translation>Y %1 más, en la hoja de puesta en marcha.</translation>
    </message>
    <message>
        <source>What is left to do</source>
        <translation>Lo que queda por hacer</translation>
    </message>
    <message>
        <source>Nothing that this visit has found.</source>
        <translation>Nada que esta visita haya encontrado.</translation>
    </message>
    <message>
        <source>%1: your pads in short</source>
        <translation>%1: sus paneles en breve</translation>
    </message>
    <message>
        <source>Visited on %1. The whole record is the commissioning sheet of that visit; this page is not in its place.</source>
        <translation>Visitada el %1. El registro completo es la hoja de puesta en marcha de esa visita; esta página no la sustituye.</translation>
    </message>
    <message>
        <source>In the heat</source>
        <translation>En el calor</translation>
    </message>
    <message>
        <source>Birds die within the hour when pads stop in the heat. If a pad stays dry while the pump is called for, put the pump on by hand, watch the birds, and call the service firm.</source>
        <translation>Las aves mueren en menos de una hora cuando los paneles se detienen en el calor. Si un panel sigue seco mientras se pide la bomba, encienda la bomba a mano, vigile las aves y llame a la empresa de servicio.</translation>
    </message>
    <message>
        <source>Record of this visit</source>
        <translation>Registro de esta visita</translation>
    </message>
    <message>
        <source>Visit %1, revision %2</source>
        <translation>Visita %1, revisión %2</translation>
    </message>
    <message>
        <source>SHA-256 of its record: %1</source>
        <translation>SHA-256 de su registro: %1</translation>
    </message>
    <message>
        <source>The code holds both. Whoever has the record can tell whether it is the one that this sheet was made from: the hash of what the command &quot;store show&quot; writes as JSON is this one.</source>
        <translation>El código contiene ambos. Quien tenga el registro puede saber si es aquel del que se hizo esta hoja: el hash de lo que el comando &quot;store show&quot; escribe como JSON es este.</translation>
    </message>
    <message>
        <source>%1 since %2 (%3)</source>
        <translation>%1 desde %2 (%3)</translation>
    </message>
    <message>
        <source>January %1</source>
        <translation>enero de %1</translation>
    </message>
    <message>
        <source>February %1</source>
        <translation>febrero de %1</translation>
    </message>
    <message>
        <source>March %1</source>
        <translation>marzo de %1</translation>
    </message>
    <message>
        <source>April %1</source>
        <translation>abril de %1</translation>
    </message>
    <message>
        <source>May %1</source>
        <translation>mayo de %1</translation>
    </message>
    <message>
        <source>June %1</source>
        <translation>junio de %1</translation>
    </message>
    <message>
        <source>July %1</source>
        <translation>julio de %1</translation>
    </message>
    <message>
        <source>August %1</source>
        <translation>agosto de %1</translation>
    </message>
    <message>
        <source>September %1</source>
        <translation>septiembre de %1</translation>
    </message>
    <message>
        <source>October %1</source>
        <translation>octubre de %1</translation>
    </message>
    <message>
        <source>November %1</source>
        <translation>noviembre de %1</translation>
    </message>
    <message>
        <source>December %1</source>
        <translation>diciembre de %1</translation>
    </message>
    <message>
        <source>At this rate the base on-time of %1 in the timer is no longer enough about %2; at 95 % between %3 and %4.</source>
        <translation>A este ritmo el encendido base de %1 en el temporizador deja de alcanzar hacia %2; al 95 % entre %3 y %4.</translation>
    </message>
    <message>
        <source>At this rate the base on-time of %1 in the timer is no longer enough about %2; at 95 % not before %3.</source>
        <translation>A este ritmo el encendido base de %1 en el temporizador deja de alcanzar hacia %2; al 95 % no antes de %3.</translation>
    </message>
    <message>
        <source>At this rate the base on-time of %1 in the timer is enough for more than %2 years.</source>
        <translation>A este ritmo el encendido base de %1 en el temporizador alcanza por más de %2 años.</translation>
    </message>
    <message>
        <source>By its trend it has passed %2, up to which the base on-time of %1 in the timer is enough.</source>
        <translation>Por su tendencia ya pasó de %2, hasta donde alcanza el encendido base de %1 en el temporizador.</translation>
    </message>
    <message>
        <source>At this rate it falls below the least circulation of %1 about %2; at 95 % between %3 and %4.</source>
        <translation>A este ritmo baja de la circulación mínima de %1 hacia %2; al 95 % entre %3 y %4.</translation>
    </message>
    <message>
        <source>At this rate it falls below the least circulation of %1 about %2; at 95 % not before %3.</source>
        <translation>A este ritmo baja de la circulación mínima de %1 hacia %2; al 95 % no antes de %3.</translation>
    </message>
    <message>
        <source>At this rate it stays above the least circulation of %1 for more than %2 years.</source>
        <translation>A este ritmo sigue por encima de la circulación mínima de %1 por más de %2 años.</translation>
    </message>
    <message>
        <source>By its trend it is below %2, the least circulation of %1.</source>
        <translation>Por su tendencia está por debajo de %2, la circulación mínima de %1.</translation>
    </message>
    <message>
        <source>%1: not measured yet.</source>
        <translation>%1: aún no medido.</translation>
    </message>
    <message>
        <source>Since the visit of %1 it has been higher than in the first %2 that count here.</source>
        <translation>Desde la visita del %1 es mayor que en las primeras %2 que cuentan aquí.</translation>
    </message>
    <message>
        <source>Since the visit of %1 it has been lower than in the first %2 that count here.</source>
        <translation>Desde la visita del %1 es menor que en las primeras %2 que cuentan aquí.</translation>
    </message>
    <message>
        <source>Likely cause: less water comes into the header, from a worn pump, a clogged strainer, a low sump or a valve that is not fully open.</source>
        <translation>Causa probable: entra menos agua al distribuidor, por una bomba gastada, un colador tapado, un tanque bajo o una válvula que no está abierta del todo.</translation>
    </message>
    <message>
        <source>Likely cause: water takes longer through the pad, by clogged outlets in the header or by scale and blind flutes in the pad.</source>
        <translation>Causa probable: el agua tarda más en pasar por el panel, por orificios tapados en el distribuidor o por sarro y canales ciegos en el panel.</translation>
    </message>
    <message>
        <source>Likely cause: the pad cools less than it did, by scale, dust, sagging pads or gaps beside them.</source>
        <translation>Causa probable: el panel enfría menos que antes, por sarro, polvo, paneles vencidos o huecos a su lado.</translation>
    </message>
    <message>
        <source>What to do: clean the strainer, see that the sump is full and the valves are open, then measure the flow; if it is still low, have the pump looked at.</source>
        <translation>Qué hacer: limpie el colador, vea que el tanque esté lleno y las válvulas abiertas, luego mida el caudal; si sigue bajo, haga revisar la bomba.</translation>
    </message>
    <message>
        <source>What to do: clean the outlets, flush the header and time again; if it is still slow, look for scale in the pad and check the bleed.</source>
        <translation>Qué hacer: limpie los orificios, lave el distribuidor y tome otra vez el tiempo; si sigue lento, busque sarro en el panel y revise la purga.</translation>
    </message>
    <message>
        <source>What to do: clean the pads, close the gaps and measure again; if it stays low, plan new pads before the next summer.</source>
        <translation>Qué hacer: limpie los paneles, cierre los huecos y mida otra vez; si sigue baja, prevea paneles nuevos antes del próximo verano.</translation>
    </message>
    <message>
        <source>something that does not do its job was left</source>
        <translation>quedó algo que no cumple su función</translation>
    </message>
    <message>
        <source>its wetting gets worse over the years</source>
        <translation>su mojado empeora con los años</translation>
    </message>
    <message>
        <source>once a year, before the next hot season</source>
        <translation>una vez al año, antes de la próxima temporada de calor</translation>
    </message>
    <message>
        <source>%1: %2, not set before</source>
        <translation>%1: %2, antes sin poner</translation>
    </message>
    <message>
        <source>%1: %2, then not set</source>
        <translation>%1: %2, luego sin poner</translation>
    </message>
    <message>
        <source>%1: %2, then %3</source>
        <translation>%1: %2, luego %3</translation>
    </message>
    <message>
        <source>Over the visits</source>
        <translation>A lo largo de las visitas</translation>
    </message>
    <message>
        <source>At first</source>
        <translation>Al principio</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Against earlier visits</source>
        <translation>Frente a visitas anteriores</translation>
    </message>
    <message>
        <source>Trend: Mann-Kendall test at 5 %, slope by Theil-Sen with limits at 95 %, from the last maintenance of that bank on. Fewer than 5 visits are too few to tell.</source>
        <translation>Tendencia: prueba de Mann-Kendall al 5 %, pendiente de Theil-Sen con límites al 95 %, a partir del último mantenimiento de ese banco. Menos de 5 visitas son muy pocas para decirlo.</translation>
    </message>
    <message>
        <source>Signed %1, drawn on the screen</source>
        <translation>Firmado %1, dibujado en la pantalla</translation>
    </message>
    <message>
        <source>Prices are in</source>
        <translation>Los precios están en</translation>
    </message>
    <message>
        <source>What the cost of a day is told in.</source>
        <translation>En qué se dice el costo de un día.</translation>
    </message>
    <message>
        <source>Price of water</source>
        <translation>Precio del agua</translation>
    </message>
    <message>
        <source>For the cost of a day; without it, none is told.</source>
        <translation>Para el costo de un día; sin él, no se dice ninguno.</translation>
    </message>
    <message>
        <source>Price of power</source>
        <translation>Precio de la energía</translation>
    </message>
    <message>
        <source>Electric power of the pump</source>
        <translation>Potencia eléctrica de la bomba</translation>
    </message>
    <message>
        <source>For what a day of pumping costs; without it, none is told.</source>
        <translation>Para lo que cuesta un día de bombeo; sin ella, no se dice.</translation>
    </message>
    <message>
        <source>From there on these fans run; 0 for those that always do.</source>
        <translation>Desde ahí trabajan estos ventiladores; 0 para los que trabajan siempre.</translation>
    </message>
    <message>
        <source>air through the pads</source>
        <translation>aire por los paneles</translation>
    </message>
    <message>
        <source>Fan stages</source>
        <translation>Etapas de ventiladores</translation>
    </message>
    <message>
        <source>For a day hour by hour; without them, all fans run with the pads.</source>
        <translation>Para un día hora por hora; sin ellas, todos los ventiladores trabajan con los paneles.</translation>
    </message>
    <message>
        <source>Number of birds</source>
        <translation>Número de aves</translation>
    </message>
    <message>
        <source>For the heat that they add along the house; without it, none is counted.</source>
        <translation>Por el calor que agregan a lo largo de la caseta; sin él, no se cuenta ninguno.</translation>
    </message>
    <message>
        <source>Mass of a bird, when heaviest</source>
        <translation>Masa de un ave, cuando más pesa</translation>
    </message>
    <message>
        <source>Heat from sun and building, hottest hour</source>
        <translation>Calor del sol y del edificio, hora más caliente</translation>
    </message>
    <message>
        <source>For the same; without it, none is counted.</source>
        <translation>Para lo mismo; sin él, no se cuenta ninguno.</translation>
    </message>
    <message>
        <source>Lag of the house sensor</source>
        <translation>Retraso del sensor de la caseta</translation>
    </message>
    <message>
        <source>How late the timer sees what the pads do; without it, 3 min are assumed.</source>
        <translation>Qué tan tarde ve el temporizador lo que hacen los paneles; sin él, se suponen 3 min.</translation>
    </message>
    <message>
        <source>Pad bank</source>
        <translation>Banco de paneles</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Hallazgo</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>cuenta</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>apartada</translation>
    </message>
    <message>
        <source>A reading</source>
        <translation>Una lectura</translation>
    </message>
    <message>
        <source>Photo %1. %2</source>
        <translation>Foto %1. %2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>The photo itself is not at hand here; the record names it.</source>
        <translation>La foto misma no está a la mano aquí; el registro la nombra.</translation>
    </message>
    <message>
        <source>At the hottest the house is as warm either way, but as found the pads dry in between, which scales them.</source>
        <translation>En lo más caliente la caseta queda igual de las dos formas, pero según lo encontrado los paneles se secan entre tanto, lo que les forma sarro.</translation>
    </message>
    <message>
        <source>The pumps lift about as much water.</source>
        <translation>Las bombas suben más o menos la misma agua.</translation>
    </message>
    <message>
        <source>The pumps lift %1 less water.</source>
        <translation>Las bombas suben %1 menos agua.</translation>
    </message>
    <message>
        <source>House at its hottest</source>
        <translation>Caseta en lo más caliente</translation>
    </message>
    <message>
        <source>Time above the limit of the house</source>
        <translation>Tiempo por encima del límite de la caseta</translation>
    </message>
    <message>
        <source>Cooling lost to dry pads</source>
        <translation>Enfriamiento perdido por paneles secos</translation>
    </message>
    <message>
        <source>Time in which litter gets wet</source>
        <translation>Tiempo en que se moja la cama</translation>
    </message>
    <message>
        <source>Water pumped</source>
        <translation>Agua bombeada</translation>
    </message>
    <message>
        <source>Water evaporated</source>
        <translation>Agua evaporada</translation>
    </message>
    <message>
        <source>Water bled off</source>
        <translation>Agua purgada</translation>
    </message>
    <message>
        <source>Energy of the pumps</source>
        <translation>Energía de las bombas</translation>
    </message>
    <message>
        <source>Pump starts</source>
        <translation>Arranques de bomba</translation>
    </message>
    <message>
        <source>Times that a pad gets wet and dry</source>
        <translation>Veces que un panel se moja y se seca</translation>
    </message>
    <message>
        <source>Cost of power and water</source>
        <translation>Costo de energía y agua</translation>
    </message>
    <message>
        <source>%1 That saves %2.</source>
        <translation>%1 Eso ahorra %2.</translation>
    </message>
    <message>
        <source>The file names daylight saving from %1 to %2; its hours are in standard time all year, as the format has them.</source>
        <translation>El archivo indica horario de verano del %1 al %2; sus horas están en hora estándar todo el año, como lo manda el formato.</translation>
    </message>
    <message>
        <source>A year made of months of several years; it is dated %1.</source>
        <translation>Un año hecho de meses de varios años; se fecha como %1.</translation>
    </message>
    <message>
        <source>Hours without an air pressure: %1; they have that of the standard atmosphere at the station&apos;s elevation, %2.</source>
        <translation>Horas sin presión del aire: %1; llevan la de la atmósfera estándar a la altitud de la estación, %2.</translation>
    </message>
    <message>
        <source>Pads are not called in this weather.</source>
        <translation>En este clima no se piden los paneles.</translation>
    </message>
    <message>
        <source>No other setting of the timer pumps less and cools as well as the advised one.</source>
        <translation>Ningún otro ajuste del temporizador bombea menos y enfría tan bien como el recomendado.</translation>
    </message>
    <message>
        <source>The timer holds no shorter run than %1.</source>
        <translation>El temporizador no admite un encendido más corto que %1.</translation>
    </message>
    <message>
        <source>No setting of the timer was found that pumps less.</source>
        <translation>No se encontró ningún ajuste del temporizador que bombee menos.</translation>
    </message>
    <message>
        <source>No cycle pumps less than continuous pumping in this weather.</source>
        <translation>En este clima ningún ciclo bombea menos que el bombeo continuo.</translation>
    </message>
    <message>
        <source>No run that the timer can hold fits into a period with a rest of %1.</source>
        <translation>Ningún encendido que el temporizador admita cabe en un periodo con un descanso de %1.</translation>
    </message>
    <message>
        <source>a pad bank</source>
        <translation>un banco de paneles</translation>
    </message>
    <message>
        <source>%1: readings by the stopwatch</source>
        <translation>%1: lecturas con cronómetro</translation>
    </message>
    <message>
        <source>%1: length and height of the pads, and the fans&apos; airflow</source>
        <translation>%1: largo y alto de los paneles, y el flujo de aire de los ventiladores</translation>
    </message>
    <message>
        <source>%1: effectiveness %2</source>
        <translation>%1: eficiencia %2</translation>
    </message>
    <message>
        <source>%1: its pads begin to dry as soon as the pause tested at the wet start is over</source>
        <translation>%1: sus paneles empiezan a secarse en cuanto termina la pausa probada en el arranque en mojado</translation>
    </message>
    <message>
        <source>%1: flow of %2, no more than its pads take up</source>
        <translation>%1: caudal de %2, no más de lo que absorben sus paneles</translation>
    </message>
    <message>
        <source>%1: water comes along the header evenly</source>
        <translation>%1: el agua avanza parejo por el distribuidor</translation>
    </message>
    <message>
        <source>all fans run at all hours</source>
        <translation>todos los ventiladores trabajan a toda hora</translation>
    </message>
    <message>
        <source>fan stages are not used: they need degrees and airflow rising from stage to stage, and a timer&apos;s target</source>
        <translation>las etapas de ventiladores no se usan: necesitan grados y caudal de aire que suban de etapa en etapa, y el objetivo de un temporizador</translation>
    </message>
    <message>
        <source>a fan stage ends %1 below where it begins</source>
        <translation>una etapa de ventiladores termina %1 por debajo de donde empieza</translation>
    </message>
    <message>
        <source>%1: the same effectiveness at every fan stage</source>
        <translation>%1: la misma eficiencia en cada etapa de ventiladores</translation>
    </message>
    <message>
        <source>no heat of birds, as their number or mass is not entered</source>
        <translation>sin calor de las aves, pues no se ingresó su número o su masa</translation>
    </message>
    <message>
        <source>no heat from sun and building, as none is entered</source>
        <translation>sin calor del sol y del edificio, pues no se ingresó ninguno</translation>
    </message>
    <message>
        <source>lag of the house sensor %1</source>
        <translation>retraso del sensor de la caseta %1</translation>
    </message>
    <message>
        <source>%1: pads called for at all hours, as there is no start temperature</source>
        <translation>%1: los paneles se piden a toda hora, porque no hay temperatura de arranque</translation>
    </message>
    <message>
        <source>%1: period and on-time</source>
        <translation>%1: periodo y tiempo de encendido</translation>
    </message>
    <message>
        <source>%1: the on-time stays at its base, as there is no target temperature</source>
        <translation>%1: el encendido se queda en su base, porque no hay temperatura objetivo</translation>
    </message>
    <message>
        <source>%1: settings found</source>
        <translation>%1: ajustes encontrados</translation>
    </message>
    <message>
        <source>%1: settings left</source>
        <translation>%1: ajustes dejados</translation>
    </message>
    <message>
        <source>%1: advice</source>
        <translation>%1: recomendación</translation>
    </message>
    <message>
        <source>Column %1 is not used.</source>
        <translation>La columna %1 no se usa.</translation>
    </message>
    <message>
        <source>Hours without an air pressure: %1; they have that of the site, %2.</source>
        <translation>Horas sin presión del aire: %1; llevan la del sitio, %2.</translation>
    </message>
    <message>
        <source>%1 to %2: not in the file</source>
        <translation>%1 a %2: no está en el archivo</translation>
    </message>
    <message>
        <source>%1 to %2: a value is missing (from line %3 on)</source>
        <translation>%1 a %2: falta un valor (desde la línea %3)</translation>
    </message>
    <message>
        <source>%1: a single hour between two gaps (line %2)</source>
        <translation>%1: una sola hora entre dos huecos (línea %2)</translation>
    </message>
    <message>
        <source>The hottest day, worked out hour by hour</source>
        <translation>El día más caliente, calculado hora por hora</translation>
    </message>
    <message>
        <source>Not worked out, as it lacks: %1</source>
        <translation>No calculado, pues falta: %1</translation>
    </message>
    <message>
        <source>On that day</source>
        <translation>Ese día</translation>
    </message>
    <message>
        <source>Assumed: %1</source>
        <translation>Supuesto: %1</translation>
    </message>
    <message>
        <source>It would lose %1 of the cooling of continuous pumping; at most %2 may be lost.</source>
        <translation>Perdería %1 del enfriamiento del bombeo continuo; se puede perder a lo más %2.</translation>
    </message>
    <message>
        <source>The house would get %1 warmer at its hottest than with continuous pumping; at most %2 are accepted.</source>
        <translation>La caseta quedaría %1 más caliente en lo más caliente que con bombeo continuo; se aceptan a lo más %2.</translation>
    </message>
    <message>
        <source>Not runs of %1 to %2 every %3: %4</source>
        <translation>No encendidos de %1 a %2 cada %3: %4</translation>
    </message>
    <message>
        <source>%1: no cycle cools as well as continuous pumping. %2</source>
        <translation>%1: ningún ciclo enfría tan bien como el bombeo continuo. %2</translation>
    </message>
    <message>
        <source>%1: %2 in every %3, up to %4</source>
        <translation>%1: %2 en cada %3, hasta %4</translation>
    </message>
    <message>
        <source>%1; on the design day %2 less water is pumped than as advised. %3</source>
        <translation>%1; en el día de diseño se bombea %2 menos agua que según lo recomendado. %3</translation>
    </message>
    <message>
        <source>At the hottest the house stays %1 cooler as %2 than as found, because the pads stay wet.</source>
        <translation>En lo más caliente la caseta queda %1 más fresca según lo %2 que según lo encontrado, porque los paneles siguen mojados.</translation>
    </message>
    <message>
        <source>At the hottest the house stays %1 cooler as %2 than as found.</source>
        <translation>En lo más caliente la caseta queda %1 más fresca según lo %2 que según lo encontrado.</translation>
    </message>
    <message>
        <source>At the hottest the house gets %1 warmer as %2 than as found.</source>
        <translation>En lo más caliente la caseta queda %1 más caliente según lo %2 que según lo encontrado.</translation>
    </message>
    <message>
        <source>The house stays as cool as %1 as it does as found.</source>
        <translation>La caseta queda igual de fresca según lo %1 que según lo encontrado.</translation>
    </message>
    <message>
        <source>The pumps lift %1 more water.</source>
        <translation>Las bombas suben %1 más agua.</translation>
    </message>
    <message>
        <source>tried</source>
        <translation>probado</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::AdviceViewModel</name>
    <message>
        <source>Target</source>
        <translation>Objetivo</translation>
    </message>
    <message>
        <source>This bank decides: the others need less.</source>
        <translation>Este banco decide: los otros necesitan menos.</translation>
    </message>
    <message>
        <source>%1, rounded up to a step of %2</source>
        <translation>%1, redondeado hacia arriba a un paso de %2</translation>
    </message>
    <message>
        <source>%1, rounded down to a step of %2</source>
        <translation>%1, redondeado hacia abajo a un paso de %2</translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation>Fila %1: %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Cannot be held as advised. %1</source>
        <translation>No se admite como se recomienda. %1</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::BundlesViewModel</name>
    <message>
        <source>Farm: %1</source>
        <translation>Granja: %1</translation>
    </message>
    <message>
        <source>House: %1</source>
        <translation>Caseta: %1</translation>
    </message>
    <message>
        <source>A visit of %1</source>
        <translation>Una visita de %1</translation>
    </message>
    <message>
        <source>Setting template %1</source>
        <translation>Plantilla de ajustes %1</translation>
    </message>
    <message>
        <source>entered %1, signed</source>
        <translation>ingresado %1, firmado</translation>
    </message>
    <message>
        <source>entered %1</source>
        <translation>ingresado %1</translation>
    </message>
    <message>
        <source>Entries kept aside, unharmed: %1. They wait for other bundles, or a later version of this program made them; each bundle from here passes them on.</source>
        <translation>Entradas apartadas, intactas: %1. Esperan otros paquetes, o las hizo una versión posterior de este programa; cada paquete de aquí las pasa adelante.</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>Writing to %1</source>
        <translation>Escribiendo en %1</translation>
    </message>
    <message>
        <source>No bundle was written. %1</source>
        <translation>No se escribió ningún paquete. %1</translation>
    </message>
    <message>
        <source>Nothing is new for that machine: no bundle was written.</source>
        <translation>No hay nada nuevo para ese equipo: no se escribió ningún paquete.</translation>
    </message>
    <message>
        <source>Written and read back: %1. Entries: %2. It counts as delivered once its receipt is read here.</source>
        <translation>Escrito y vuelto a leer: %1. Entradas: %2. Cuenta como entregado cuando aquí se lea su recibo.</translation>
    </message>
    <message>
        <source>Made on %1</source>
        <translation>Hecho el %1</translation>
    </message>
    <message>
        <source>New entries: %1; farms %2, houses %3, visits %4, templates %5, marks %6</source>
        <translation>Entradas nuevas: %1; granjas %2, casetas %3, visitas %4, plantillas %5, marcas %6</translation>
    </message>
    <message>
        <source>Entries there already: %1</source>
        <translation>Entradas que ya estaban: %1</translation>
    </message>
    <message>
        <source>Entries kept aside, because something they need is not here yet or a later version made them: %1</source>
        <translation>Entradas apartadas, porque aún falta algo que necesitan o las hizo una versión posterior: %1</translation>
    </message>
    <message>
        <source>Entries kept aside earlier and in their place now: %1</source>
        <translation>Entradas apartadas antes y ahora en su lugar: %1</translation>
    </message>
    <message>
        <source>Changed on two machines, both are kept: %1</source>
        <translation>Cambiado en dos equipos, se conservan ambos: %1</translation>
    </message>
    <message>
        <source>Reading the bundle</source>
        <translation>Leyendo el paquete</translation>
    </message>
    <message>
        <source>This bundle cannot be used, and nothing was changed. %1</source>
        <translation>Este paquete no sirve, y nada cambió. %1</translation>
    </message>
    <message>
        <source>Reading the receipt</source>
        <translation>Leyendo el recibo</translation>
    </message>
    <message>
        <source>Entries delivered: %1, newly: %2.</source>
        <translation>Entradas entregadas: %1, recién: %2.</translation>
    </message>
    <message>
        <source>This receipt cannot be used. %1</source>
        <translation>Este recibo no sirve. %1</translation>
    </message>
    <message>
        <source>Taking in the records</source>
        <translation>Recibiendo los registros</translation>
    </message>
    <message>
        <source>Nothing was taken in. %1</source>
        <translation>No se recibió nada. %1</translation>
    </message>
    <message>
        <source>The receipt for the sender is beside the bundle: bring the stick back.</source>
        <translation>El recibo para quien envía está junto al paquete: devuelva la memoria.</translation>
    </message>
    <message>
        <source>The receipt could not be written: %1 Take the bundle in once more to get one.</source>
        <translation>No se pudo escribir el recibo: %1 Reciba el paquete otra vez para obtener uno.</translation>
    </message>
    <message>
        <source>That state is the record now. The other stays in its history.</source>
        <translation>Ese estado es ahora el registro. El otro queda en su historial.</translation>
    </message>
    <message>
        <source>Nothing was chosen. %1</source>
        <translation>No se eligió nada. %1</translation>
    </message>
    <message>
        <source>All records</source>
        <translation>Todos los registros</translation>
    </message>
    <message>
        <source>What is new for machine %1</source>
        <translation>Lo nuevo para el equipo %1</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::ConditionsViewModel</name>
    <message>
        <source>outside</source>
        <translation>afuera</translation>
    </message>
    <message>
        <source>%1
%2, %3</source>
        <translation>%1
%2, %3</translation>
    </message>
    <message>
        <source>temperature, %1</source>
        <translation>temperatura, %1</translation>
    </message>
    <message>
        <source>water in the air, %1</source>
        <translation>agua en el aire, %1</translation>
    </message>
    <message>
        <source>wet bulb %1</source>
        <translation>bulbo húmedo %1</translation>
    </message>
    <message>
        <source>For the picture, the outside temperature is needed, and the outside humidity, wet bulb or dew point.</source>
        <translation>Para la gráfica se necesita la temperatura exterior, y la humedad, el bulbo húmedo o el punto de rocío exterior.</translation>
    </message>
    <message>
        <source>A pad can cool this air to its wet bulb at most: %1, that is by %2.</source>
        <translation>Un panel puede enfriar este aire a lo más hasta su bulbo húmedo: %1, es decir, %2.</translation>
    </message>
    <message>
        <source>behind the pad</source>
        <translation>detrás del panel</translation>
    </message>
    <message>
        <source>Behind the pad it is colder than the wet bulb outside, which no pad does: check the thermometers.</source>
        <translation>Detrás del panel está más frío que el bulbo húmedo exterior, lo que ningún panel logra: revise los termómetros.</translation>
    </message>
    <message>
        <source>in the house</source>
        <translation>en la caseta</translation>
    </message>
    <message>
        <source>One point, %1: at least %2 make a mean.</source>
        <translation>Un punto, %1: para un promedio hacen falta al menos %2.</translation>
    </message>
    <message>
        <source>Mean of %1 points %2, from %3 to %4.</source>
        <translation>Promedio de %1 puntos: %2, de %3 a %4.</translation>
    </message>
    <message>
        <source>%1 Too few to be firm: at least %2 points.</source>
        <translation>%1 Muy pocos para estar seguro: al menos %2 puntos.</translation>
    </message>
    <message>
        <source>The pad cools %1 of the way to the wet bulb; a clean new one at this speed: %2.</source>
        <translation>El panel enfría %1 del camino al bulbo húmedo; uno nuevo y limpio a esta velocidad: %2.</translation>
    </message>
    <message>
        <source>The pad cools %1 of the way to the wet bulb.</source>
        <translation>El panel enfría %1 del camino al bulbo húmedo.</translation>
    </message>
    <message>
        <source>Caught at %1 outlets: the least gives %2 of their mean.</source>
        <translation>Captado en %1 orificios: el menor da %2 de su promedio.</translation>
    </message>
    <message>
        <source>Point %1</source>
        <translation>Punto %1</translation>
    </message>
    <message>
        <source>Catch %1</source>
        <translation>Captación %1</translation>
    </message>
    <message>
        <source>%1, %2; this one is used.</source>
        <translation>%1, %2; se usa este.</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation>%1, %2.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::CopiesViewModel</name>
    <message>
        <source>houses: %1, entries: %2, latest entry %3</source>
        <translation>casetas: %1, datos: %2, último dato %3</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>No copy is here yet.</source>
        <translation>Aún no hay copias aquí.</translation>
    </message>
    <message>
        <source>Last copy: %1, %2</source>
        <translation>Última copia: %1, %2</translation>
    </message>
    <message>
        <source>The copy of today could not be made, the records themselves go on. %1</source>
        <translation>No se pudo hacer la copia de hoy; los registros mismos siguen funcionando. %1</translation>
    </message>
    <message>
        <source>on this tablet</source>
        <translation>en esta tableta</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>Copying to %1</source>
        <translation>Copiando a %1</translation>
    </message>
    <message>
        <source>Copied and read back: %1</source>
        <translation>Copiado y verificado: %1</translation>
    </message>
    <message>
        <source>No copy was made. %1</source>
        <translation>No se hizo la copia. %1</translation>
    </message>
    <message>
        <source>Reading the copy</source>
        <translation>Leyendo la copia</translation>
    </message>
    <message>
        <source>This copy cannot be used. %1</source>
        <translation>Esta copia no se puede usar. %1</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Copia de %1</translation>
    </message>
    <message>
        <source>It holds %1.</source>
        <translation>Contiene %1.</translation>
    </message>
    <message>
        <source>What the records hold now cannot be read. %1</source>
        <translation>No se puede leer lo que contienen ahora los registros. %1</translation>
    </message>
    <message>
        <source>This copy is not an earlier state of these records. They hold now %1. What is not in the copy goes out of sight.</source>
        <translation>Esta copia no es un estado anterior de estos registros. Ahora contienen %1. Lo que no está en la copia queda fuera de la vista.</translation>
    </message>
    <message>
        <source>Nothing was entered since this copy was made.</source>
        <translation>No se ingresó nada desde que se hizo esta copia.</translation>
    </message>
    <message>
        <source>Entries made since this copy: %1. They go out of sight: the records hold now %2.</source>
        <translation>Datos ingresados desde esta copia: %1. Quedan fuera de la vista: los registros contienen ahora %2.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::DayViewModel</name>
    <message>
        <source>Working out the season</source>
        <translation>Calculando la temporada</translation>
    </message>
    <message>
        <source>No season was worked out. %1</source>
        <translation>No se calculó ninguna temporada. %1</translation>
    </message>
    <message>
        <source>Trying every cycle</source>
        <translation>Probando todos los ciclos</translation>
    </message>
    <message>
        <source>Nothing was found. %1</source>
        <translation>No se encontró nada. %1</translation>
    </message>
    <message>
        <source>No cycle is advised for a timer of this house, so there is none to better.</source>
        <translation>No se recomienda un ciclo para ningún temporizador de esta caseta, así que no hay ninguno que mejorar.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::EntryUndoViewModel</name>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>Not made again: %1</source>
        <translation>No se rehízo: %1</translation>
    </message>
    <message>
        <source>Not taken back: %1</source>
        <translation>No se deshizo: %1</translation>
    </message>
    <message>
        <source>Made again: %1</source>
        <translation>Rehecho: %1</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::FormModel</name>
    <message>
        <source>usual: %1; anything else is kept as found, and marked</source>
        <translation>usual: %1; otro valor se guarda como se encontró, y se señala</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>outside what is usual: kept as found</source>
        <translation>fuera de lo usual: se guarda como se encontró</translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation>nada ingresado</translation>
    </message>
    <message>
        <source>%1 entered</source>
        <translation>ingresados: %1</translation>
    </message>
    <message>
        <source>%1 of %2 entered</source>
        <translation>ingresados: %1 de %2</translation>
    </message>
    <message>
        <source>There is no such line.</source>
        <translation>No existe esa línea.</translation>
    </message>
    <message>
        <source>%1 is no time of day: write it from 00:00 to 23:59, as 09:30.</source>
        <translation>%1 no es una hora del día: escríbala de 00:00 a 23:59, como 09:30.</translation>
    </message>
    <message>
        <source>%1 is beyond what goes here: %2.</source>
        <translation>%1 está fuera de lo que se admite aquí: %2.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::HandoutViewModel</name>
    <message>
        <source>Writing to %1 and reading back</source>
        <translation>Se escribe en %1 y se vuelve a leer</translation>
    </message>
    <message>
        <source>On the stick and read back: %1</source>
        <translation>En la memoria y vuelto a leer: %1</translation>
    </message>
    <message>
        <source>The summary was sent to the printer.</source>
        <translation>El resumen se envió a la impresora.</translation>
    </message>
    <message>
        <source>Not printed.</source>
        <translation>No se imprimió.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::HistoryViewModel</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>first %1, last %2</source>
        <translation>primera %1, última %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>verano</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>limit: base on-time %1</source>
        <translation>límite: encendido base %1</translation>
    </message>
    <message>
        <source>limit: least circulation</source>
        <translation>límite: circulación mínima</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Found changed since the visit before. %1</source>
        <translation>Se encontró cambiado desde la visita anterior. %1</translation>
    </message>
    <message>
        <source>Left as found.</source>
        <translation>Se dejó como se encontró.</translation>
    </message>
    <message>
        <source>Changed. %1</source>
        <translation>Cambiado. %1</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto tiempo</translation>
    </message>
    <message>
        <source>visits: %1, with changes: %2</source>
        <translation>visitas: %1, con cambios: %2</translation>
    </message>
    <message>
        <source>houses read: %1, still to read: %2</source>
        <translation>casetas leídas: %1, por leer: %2</translation>
    </message>
    <message>
        <source>Next visit by %1: %2.</source>
        <translation>Próxima visita a más tardar el %1: %2.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::HouseViewModel</name>
    <message>
        <source>pad length</source>
        <translation>largo del panel</translation>
    </message>
    <message>
        <source>header bore</source>
        <translation>diámetro interior del distribuidor</translation>
    </message>
    <message>
        <source>outlet bore</source>
        <translation>diámetro de los orificios</translation>
    </message>
    <message>
        <source>outlet spacing</source>
        <translation>separación de los orificios</translation>
    </message>
    <message>
        <source>For the flow by outlet, this is missing: %1.</source>
        <translation>Para el caudal por orificio falta: %1.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 into this header, its share of the pump&apos;s flow %2; %3 at its inlet.</source>
        <translation>%1 a este distribuidor, su parte del caudal de la bomba %2; %3 en su entrada.</translation>
    </message>
    <message>
        <source>head at the inlet %1</source>
        <translation>carga en la entrada %1</translation>
    </message>
    <message>
        <source>low-quarter uniformity %1</source>
        <translation>uniformidad del cuarto inferior %1</translation>
    </message>
    <message>
        <source>first outlet %1</source>
        <translation>primer orificio %1</translation>
    </message>
    <message>
        <source>last outlet %1</source>
        <translation>último orificio %1</translation>
    </message>
    <message>
        <source>mean of %1 outlets</source>
        <translation>promedio de %1 orificios</translation>
    </message>
    <message>
        <source>lowest outlet %1</source>
        <translation>orificio menor %1</translation>
    </message>
    <message>
        <source>lowest quarter</source>
        <translation>cuarto inferior</translation>
    </message>
    <message>
        <source>no velocity head regained</source>
        <translation>sin recuperar carga de velocidad</translation>
    </message>
    <message>
        <source>all of it regained</source>
        <translation>recuperada toda</translation>
    </message>
    <message>
        <source>For the flow by outlet, a flow is missing: measure it (Conditions), or enter the head at the header&apos;s inlet or the pump&apos;s curve.</source>
        <translation>Para el caudal por orificio falta un caudal: mídalo (Condiciones), o ingrese la carga en la entrada del distribuidor o la curva de la bomba.</translation>
    </message>
    <message>
        <source>The real header lies between the bars and the dashed line. Christiansen&apos;s coefficient %1.</source>
        <translation>El distribuidor real está entre las barras y la línea discontinua. Coeficiente de Christiansen %1.</translation>
    </message>
    <message>
        <source>Assumed: %1.</source>
        <translation>Supuesto: %1.</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Bomba</translation>
    </message>
    <message>
        <source>Bank</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Timer</source>
        <translation>Temporizador</translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation>Bombas</translation>
    </message>
    <message>
        <source>Banks</source>
        <translation>Bancos</translation>
    </message>
    <message>
        <source>Timers</source>
        <translation>Temporizadores</translation>
    </message>
    <message>
        <source>Curve point %1</source>
        <translation>Punto de la curva %1</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>one that is not here</source>
        <translation>una que no está aquí</translation>
    </message>
    <message>
        <source>The template was changed after it was chosen here. This timer keeps to it as it was.</source>
        <translation>La plantilla cambió después de elegirla aquí. Este temporizador la conserva como era.</translation>
    </message>
    <message>
        <source>Fan stage %1</source>
        <translation>Etapa de ventiladores %1</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::HousesModel</name>
    <message>
        <source>visits: %1, latest %2</source>
        <translation>visitas: %1, última %2</translation>
    </message>
    <message>
        <source>not visited yet</source>
        <translation>aún sin visitas</translation>
    </message>
    <message>
        <source>Looking at the latest visit …</source>
        <translation>Leyendo la última visita …</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::LimitsViewModel</name>
    <message>
        <source>the program&apos;s own</source>
        <translation>los del programa</translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation>cambiados: %1</translation>
    </message>
    <message>
        <source>These cannot be used together, so the program&apos;s own are: %1</source>
        <translation>No se pueden usar juntos, así que se usan los del programa: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Changed for this farm. The program&apos;s own is %1 (%2).</source>
        <translation>Cambiado para esta granja. El del programa es %1 (%2).</translation>
    </message>
    <message>
        <source>The program&apos;s own (%1).</source>
        <translation>El del programa (%1).</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::MaintenanceViewModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Entered: %1</source>
        <translation>Ingresado: %1</translation>
    </message>
    <message>
        <source>Taken out: %1</source>
        <translation>Quitado: %1</translation>
    </message>
    <message>
        <source>Taken back.</source>
        <translation>Deshecho.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::PhotosViewModel</name>
    <message>
        <source>House</source>
        <translation>Caseta</translation>
    </message>
    <message>
        <source>Photo %1. %2</source>
        <translation>Foto %1. %2</translation>
    </message>
    <message>
        <source>Choose a picture.</source>
        <translation>Elija una foto.</translation>
    </message>
    <message>
        <source>This photo is there already.</source>
        <translation>Esta foto ya está.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::ProofViewModel</name>
    <message>
        <source>1st</source>
        <translation>1.º</translation>
    </message>
    <message>
        <source>2nd</source>
        <translation>2.º</translation>
    </message>
    <message>
        <source>3rd or later</source>
        <translation>3.º o posterior</translation>
    </message>
    <message>
        <source>Not looked at</source>
        <translation>No se miró</translation>
    </message>
    <message>
        <source>this bank</source>
        <translation>este banco</translation>
    </message>
    <message>
        <source>The records are only looked at: nothing can be watched.</source>
        <translation>Los registros solo se ven: no se puede observar nada.</translation>
    </message>
    <message>
        <source>This visit is signed. Start a new visit to watch again.</source>
        <translation>Esta visita está firmada. Inicie otra visita para observar de nuevo.</translation>
    </message>
    <message>
        <source>Describe a pump and its banks first.</source>
        <translation>Primero describa una bomba y sus bancos.</translation>
    </message>
    <message>
        <source>No timer switches the pump of %1: say which does in House and banks.</source>
        <translation>Ningún temporizador maneja la bomba de %1: indique cuál en Caseta y bancos.</translation>
    </message>
    <message>
        <source>Put the pump back on automatic: in a proof run its timer switches it.</source>
        <translation>Regrese la bomba a automático: en una corrida de prueba la maneja su temporizador.</translation>
    </message>
    <message>
        <source>This pump never rests: nothing is timed. Look at the far end and at the whole face, then answer below.</source>
        <translation>Esta bomba nunca descansa: no se cronometra nada. Mire el extremo lejano y toda la cara, y responda abajo.</translation>
    </message>
    <message>
        <source>Stand at the far end of %1. Wait for the pump to start, then mark it.</source>
        <translation>Párese en el extremo lejano de %1. Espere a que arranque la bomba y márquelo.</translation>
    </message>
    <message>
        <source>The tablet restarted: this cycle does not count. Go on with the next start of the pump.</source>
        <translation>La tableta se reinició: este ciclo no cuenta. Siga con el próximo arranque de la bomba.</translation>
    </message>
    <message>
        <source>Wait for the next start, then mark it: it completes the period.</source>
        <translation>Espere el próximo arranque y márquelo: completa el periodo.</translation>
    </message>
    <message>
        <source>Mark when water comes out at the far end of %1.</source>
        <translation>Marque cuando salga agua en el extremo lejano de %1.</translation>
    </message>
    <message>
        <source>Watch under %1: mark when the far end drips evenly.</source>
        <translation>Observe debajo de %1: marque cuando el extremo lejano gotee parejo.</translation>
    </message>
    <message>
        <source>Wait for the pump to stop, then mark it.</source>
        <translation>Espere a que pare la bomba y márquelo.</translation>
    </message>
    <message>
        <source>since: %1</source>
        <translation>desde: %1</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>%1 Look: %2</source>
        <translation>%1 Revise: %2</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::RemovedViewModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Farm %1</source>
        <translation>Granja %1</translation>
    </message>
    <message>
        <source>Visit of %1, %2</source>
        <translation>Visita de %1, %2</translation>
    </message>
    <message>
        <source>Setting template %1</source>
        <translation>Plantilla de ajustes %1</translation>
    </message>
    <message>
        <source>removed %1</source>
        <translation>quitado %1</translation>
    </message>
    <message>
        <source>It goes out of sight, and with it its visits: %1.</source>
        <translation>Queda fuera de la vista, y con ella sus visitas: %1.</translation>
    </message>
    <message>
        <source>Its entries, presses and sheet go out of sight.</source>
        <translation>Sus datos, pulsaciones y hoja quedan fuera de la vista.</translation>
    </message>
    <message>
        <source>It is offered to no timer any more. Timers that carry it keep their copy.</source>
        <translation>Ya no se ofrece a ningún temporizador. Los que la usan conservan su copia.</translation>
    </message>
    <message>
        <source>It goes out of sight.</source>
        <translation>Queda fuera de la vista.</translation>
    </message>
    <message>
        <source>Remove %1?</source>
        <translation>¿Quitar %1?</translation>
    </message>
    <message>
        <source>%1 Nothing is deleted: it can be brought back, at once or later from Removed at the houses.</source>
        <translation>%1 Nada se borra: se puede traer de vuelta, ahora o después en Quitados, junto a las casetas.</translation>
    </message>
    <message>
        <source>Not removed: a pump of it is off for a test. Start it, or put it back on automatic, first.</source>
        <translation>No se quitó: una de sus bombas está apagada por una prueba. Primero arránquela o regrésela a automático.</translation>
    </message>
    <message>
        <source>Not removed: %1</source>
        <translation>No se quitó: %1</translation>
    </message>
    <message>
        <source>Not brought back: %1</source>
        <translation>No se trajo de vuelta: %1</translation>
    </message>
    <message>
        <source>Not brought back: what it belongs to was removed too; bring that back first.</source>
        <translation>No se trajo de vuelta: aquello a lo que pertenece también se quitó; traiga eso primero.</translation>
    </message>
    <message>
        <source>%1 is out of sight.</source>
        <translation>%1: fuera de la vista.</translation>
    </message>
    <message>
        <source>%1 is back.</source>
        <translation>%1: de vuelta.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SessionViewModel</name>
    <message>
        <source>Another farm</source>
        <translation>Otra granja</translation>
    </message>
    <message>
        <source>fed by %1</source>
        <translation>alimentado por %1</translation>
    </message>
    <message>
        <source>signed, presses: %1</source>
        <translation>firmada, pulsaciones: %1</translation>
    </message>
    <message>
        <source>open, presses: %1</source>
        <translation>abierta, pulsaciones: %1</translation>
    </message>
    <message>
        <source>A house needs a name, and a farm.</source>
        <translation>Una caseta necesita un nombre y una granja.</translation>
    </message>
    <message>
        <source>Presses are not stored yet.</source>
        <translation>Hay pulsaciones sin guardar.</translation>
    </message>
    <message>
        <source>They are only on this screen and are lost if you leave now. Stay, make room, or write them elsewhere first.</source>
        <translation>Solo están en esta pantalla y se pierden si sale ahora. Quédese, haga espacio o guárdelas antes en otro lugar.</translation>
    </message>
    <message>
        <source>A pump is running on the stopwatch.</source>
        <translation>Una bomba está en el cronómetro.</translation>
    </message>
    <message>
        <source>The time goes on and nothing is lost; Wetfront opens here again.</source>
        <translation>El tiempo sigue y nada se pierde; Wetfront vuelve a abrirse aquí.</translation>
    </message>
    <message>
        <source>A cycle is being watched for the proof.</source>
        <translation>Se está observando un ciclo para la prueba.</translation>
    </message>
    <message>
        <source>What you see while you are away is not in it; the presses so far are kept.</source>
        <translation>Lo que se vea mientras no está aquí no se registra; las pulsaciones hechas se conservan.</translation>
    </message>
    <message>
        <source>A pump is off for a test: the birds are without cooling.</source>
        <translation>Una bomba está apagada por una prueba: las aves están sin enfriamiento.</translation>
    </message>
    <message>
        <source>Nothing counts down once Wetfront is closed. Start the pump, or put it back on automatic, first.</source>
        <translation>Con Wetfront cerrado no hay cuenta regresiva. Primero arranque la bomba o regrésela a automático.</translation>
    </message>
    <message>
        <source>The countdown goes on, on every page. Start the pump, or put it back on automatic, before you go.</source>
        <translation>La cuenta regresiva sigue, en todas las páginas. Arranque la bomba o regrésela a automático antes de irse.</translation>
    </message>
    <message>
        <source>A pump is off for a test, and its countdown would end. Start the pump first.</source>
        <translation>Una bomba está apagada por una prueba y su cuenta regresiva terminaría. Arranque la bomba primero.</translation>
    </message>
    <message>
        <source>Presses were written elsewhere and can&apos;t go into their visit, which is signed since: %1, in %2</source>
        <translation>Hay pulsaciones guardadas en otro lugar que no pueden entrar en su visita, ya firmada: %1, en %2</translation>
    </message>
    <message>
        <source>Presses were written elsewhere and are not in the record: %1, in %2</source>
        <translation>Hay pulsaciones guardadas en otro lugar que no están en el registro: %1, en %2</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Como el sistema</translation>
    </message>
    <message>
        <source>Presses are not stored yet. Choose the language once they are.</source>
        <translation>Hay pulsaciones sin guardar. Elija el idioma cuando estén guardadas.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SettingsViewModel</name>
    <message>
        <source>found %1</source>
        <translation>encontrado %1</translation>
    </message>
    <message>
        <source>≠ advised %1</source>
        <translation>≠ recomendado %1</translation>
    </message>
    <message>
        <source>advised %1</source>
        <translation>recomendado %1</translation>
    </message>
    <message>
        <source>advised: no value, %1</source>
        <translation>recomendado: sin valor, %1</translation>
    </message>
    <message>
        <source>cannot be held as advised: %1</source>
        <translation>no se admite como se recomienda: %1</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>dejado %1</translation>
    </message>
    <message>
        <source>%1 instead of %2</source>
        <translation>%1 en lugar de %2</translation>
    </message>
    <message>
        <source>%1, row %2</source>
        <translation>%1, fila %2</translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation>Fila %1</translation>
    </message>
    <message>
        <source>%1: %2 becomes %3</source>
        <translation>%1: %2 pasa a %3</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>sin ajustar</translation>
    </message>
    <message>
        <source>It no longer says that the pump is meant to run without rest.</source>
        <translation>Ya no dice que la bomba debe trabajar sin descanso.</translation>
    </message>
    <message>
        <source>It says that the pump is meant to run without rest.</source>
        <translation>Dice que la bomba debe trabajar sin descanso.</translation>
    </message>
    <message>
        <source>Trim rows from the second on are taken out.</source>
        <translation>Se quitan las filas de corrección desde la segunda.</translation>
    </message>
    <message>
        <source>The reason for differing is taken out: %1</source>
        <translation>Se quita la razón de la diferencia: %1</translation>
    </message>
    <message>
        <source>There is no advice for this timer.</source>
        <translation>No hay recomendación para este temporizador.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SheetViewModel</name>
    <message>
        <source>Presses are not stored yet; make room first.</source>
        <translation>Hay pulsaciones sin guardar; primero haga espacio.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, checked %2</source>
        <translation>%1, revisado %2</translation>
    </message>
    <message>
        <source>Signed by %1, %2</source>
        <translation>Firmado por %1, %2</translation>
    </message>
    <message>
        <source>A pump is off for a test and not back on automatic.</source>
        <translation>Una bomba está apagada por una prueba y no ha vuelto a automático.</translation>
    </message>
    <message>
        <source>%1 has no fill time.</source>
        <translation>%1 no tiene tiempo de llenado.</translation>
    </message>
    <message>
        <source>Not ticked: %1</source>
        <translation>Sin marcar: %1</translation>
    </message>
    <message>
        <source>%1 has no settings left.</source>
        <translation>%1 no tiene ajustes dejados.</translation>
    </message>
    <message>
        <source>%1 And %2 more.</source>
        <translation>%1 Y %2 más.</translation>
    </message>
    <message>
        <source>Write a name.</source>
        <translation>Escriba un nombre.</translation>
    </message>
    <message>
        <source>Write what it is.</source>
        <translation>Escriba qué es.</translation>
    </message>
    <message>
        <source>Write what is still open.</source>
        <translation>Escriba qué queda pendiente.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made. Nothing is lost; choose another place for documents.</source>
        <translation>No se puede crear la carpeta %1. Nada se pierde; elija otro lugar para los documentos.</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Guardado en %1</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>Not printed.</source>
        <translation>No se imprimió.</translation>
    </message>
    <message>
        <source>Choose who signs.</source>
        <translation>Elija quién firma.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SheetsViewModel</name>
    <message>
        <source>All houses</source>
        <translation>Todas las casetas</translation>
    </message>
    <message>
        <source>Farm %1</source>
        <translation>Granja %1</translation>
    </message>
    <message>
        <source>Houses in the list: %1</source>
        <translation>Casetas en la lista: %1</translation>
    </message>
    <message>
        <source>This season, %1</source>
        <translation>Esta temporada, %1</translation>
    </message>
    <message>
        <source>Last season, %1</source>
        <translation>La temporada pasada, %1</translation>
    </message>
    <message>
        <source>Last 12 months</source>
        <translation>Últimos 12 meses</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Todos los días</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made. Nothing is lost; choose another place for documents.</source>
        <translation>No se puede crear la carpeta %1. Nada se pierde; elija otro lugar para los documentos.</translation>
    </message>
    <message>
        <source>Not printed.</source>
        <translation>No se imprimió.</translation>
    </message>
    <message>
        <source>There is no room to make the sheets: %1</source>
        <translation>No hay espacio para hacer las hojas: %1</translation>
    </message>
    <message>
        <source>Handing over to the printer: %1</source>
        <translation>Se entregan a la impresora: %1</translation>
    </message>
    <message>
        <source>Looking for visits. Houses still to look into: %1</source>
        <translation>Se buscan visitas. Casetas por revisar: %1</translation>
    </message>
    <message>
        <source>Sheets made: %1 of %2</source>
        <translation>Hojas hechas: %1 de %2</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Y %1 más.</translation>
    </message>
    <message>
        <source>No sheet of visit %1. %2</source>
        <translation>Sin hoja de la visita %1. %2</translation>
    </message>
    <message>
        <source>Nothing was printed.</source>
        <translation>No se imprimió nada.</translation>
    </message>
    <message>
        <source>Whole before that: %1 of %2, in %3</source>
        <translation>Completas antes de eso: %1 de %2, en %3</translation>
    </message>
    <message>
        <source>Stopped. Nothing was printed.</source>
        <translation>Detenido. No se imprimió nada.</translation>
    </message>
    <message>
        <source>Stopped. Whole and read back: %1 of %2, in %3</source>
        <translation>Detenido. Completas y vueltas a leer: %1 de %2, en %3</translation>
    </message>
    <message>
        <source>There is no such visit.</source>
        <translation>No hay tal visita.</translation>
    </message>
    <message>
        <source>Written and read back: %1 of %2, in %3</source>
        <translation>Escritas y vueltas a leer: %1 de %2, en %3</translation>
    </message>
    <message>
        <source>Sent to the printer as one job: %1 of %2</source>
        <translation>Enviadas a la impresora como un solo trabajo: %1 de %2</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SignatureViewModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Signed %1</source>
        <translation>Firmado %1</translation>
    </message>
    <message>
        <source>Drawn %1, goes onto the sheet once it is signed</source>
        <translation>Dibujada %1, pasa a la hoja al firmar</translation>
    </message>
    <message>
        <source>No signature is drawn by: %1. The sheet keeps a line for signing by hand.</source>
        <translation>No dibujó su firma: %1. La hoja conserva un renglón para firmar a mano.</translation>
    </message>
    <message>
        <source>Nobody is named who signs for the grower: left out here, a line on the sheet is kept for him.</source>
        <translation>No se nombra a quien firma por el granjero: se omite aquí, y la hoja le conserva un renglón.</translation>
    </message>
    <message>
        <source>Nothing is drawn yet.</source>
        <translation>Aún no hay nada dibujado.</translation>
    </message>
    <message>
        <source>Lines drawn: %1.</source>
        <translation>Líneas dibujadas: %1.</translation>
    </message>
    <message>
        <source>The field is full: the last line was not taken. Take the signature as it is, or clear it.</source>
        <translation>El campo está lleno: la última línea no se tomó. Use la firma como está o bórrela.</translation>
    </message>
    <message>
        <source>Too little for a signature. Sign across the field, or cancel.</source>
        <translation>Muy poco para una firma. Firme a lo ancho del campo o cancele.</translation>
    </message>
    <message>
        <source>The visit or its sheet was changed: what had been drawn was for the sheet before, and is taken off. Sign again.</source>
        <translation>La visita o su hoja cambió: lo dibujado era para la hoja anterior y se quitó. Firme de nuevo.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::StartProblemViewModel</name>
    <message>
        <source>It holds %1. What was entered after that is not in it.</source>
        <translation>Contiene %1. Lo ingresado después no está en ella.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::StepsModel</name>
    <message>
        <source>at most %1 off, stop at %2</source>
        <translation>a lo más %1 apagados, parar a %2</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Seguridad</translation>
    </message>
    <message>
        <source>The pump was timed without an agreement on how long the pads may be off.</source>
        <translation>Se cronometró la bomba sin acordar cuánto tiempo pueden estar apagados los paneles.</translation>
    </message>
    <message>
        <source>nothing agreed yet</source>
        <translation>aún nada acordado</translation>
    </message>
    <message>
        <source>House and banks</source>
        <translation>Caseta y bancos</translation>
    </message>
    <message>
        <source>No timer switches %1.</source>
        <translation>Ningún temporizador maneja %1.</translation>
    </message>
    <message>
        <source>pumps: %1, banks: %2</source>
        <translation>bombas: %1, bancos: %2</translation>
    </message>
    <message>
        <source>Time the water</source>
        <translation>Tiempo del agua</translation>
    </message>
    <message>
        <source>%1 of %2 banks timed</source>
        <translation>%1 de %2 bancos cronometrados</translation>
    </message>
    <message>
        <source>wet bulb %1</source>
        <translation>bulbo húmedo %1</translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation>punto de rocío %1</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>outside %1, %2</source>
        <translation>afuera %1, %2</translation>
    </message>
    <message>
        <source>outside temperature and humidity are needed</source>
        <translation>hacen falta temperatura y humedad exteriores</translation>
    </message>
    <message>
        <source>harm: %1</source>
        <translation>daño: %1</translation>
    </message>
    <message>
        <source>fault: %1</source>
        <translation>falla: %1</translation>
    </message>
    <message>
        <source>waste: %1</source>
        <translation>desperdicio: %1</translation>
    </message>
    <message>
        <source>Settings found</source>
        <translation>Ajustes encontrados</translation>
    </message>
    <message>
        <source>nothing wrong found</source>
        <translation>no se halló nada mal</translation>
    </message>
    <message>
        <source>not all entered</source>
        <translation>no todo ingresado</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejo</translation>
    </message>
    <message>
        <source>a cycle is advised</source>
        <translation>se recomienda un ciclo</translation>
    </message>
    <message>
        <source>continuous pumping is advised</source>
        <translation>se recomienda bombeo continuo</translation>
    </message>
    <message>
        <source>continuous pumping until the readings are there</source>
        <translation>bombeo continuo hasta tener las lecturas</translation>
    </message>
    <message>
        <source>Settings left</source>
        <translation>Ajustes dejados</translation>
    </message>
    <message>
        <source>The settings left have a %1.</source>
        <translation>Los ajustes dejados tienen: %1.</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>ingresado</translation>
    </message>
    <message>
        <source>not entered yet</source>
        <translation>aún no ingresado</translation>
    </message>
    <message>
        <source>Proof run</source>
        <translation>Corrida de prueba</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecha</translation>
    </message>
    <message>
        <source>Before leaving</source>
        <translation>Antes de salir</translation>
    </message>
    <message>
        <source>all back as it should be</source>
        <translation>todo de vuelta como debe estar</translation>
    </message>
    <message>
        <source>lines open: %1</source>
        <translation>líneas pendientes: %1</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>nobody named yet</source>
        <translation>aún nadie nombrado</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmada</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>borrador</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::StopwatchViewModel</name>
    <message>
        <source>this bank</source>
        <translation>este banco</translation>
    </message>
    <message>
        <source>%1: running</source>
        <translation>%1: trabajando</translation>
    </message>
    <message>
        <source>%1: stopped</source>
        <translation>%1: parada</translation>
    </message>
    <message>
        <source>drips</source>
        <translation>gotea</translation>
    </message>
    <message>
        <source>wetting</source>
        <translation>mojándose</translation>
    </message>
    <message>
        <source>filling</source>
        <translation>llenándose</translation>
    </message>
    <message>
        <source>dry patch seen</source>
        <translation>mancha seca vista</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>secándose</translation>
    </message>
    <message>
        <source>running off</source>
        <translation>escurriendo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The records are only looked at: nothing can be timed.</source>
        <translation>Los registros solo se ven: no se puede cronometrar nada.</translation>
    </message>
    <message>
        <source>This visit is signed. Start a new visit to time again.</source>
        <translation>Esta visita está firmada. Inicie otra visita para cronometrar de nuevo.</translation>
    </message>
    <message>
        <source>Describe a pump and its banks first.</source>
        <translation>Primero describa una bomba y sus bancos.</translation>
    </message>
    <message>
        <source>First agree with the grower how long the pads may be off, and at which temperature you stop.</source>
        <translation>Primero acuerde con el granjero cuánto tiempo pueden estar apagados los paneles y a qué temperatura se detiene la prueba.</translation>
    </message>
    <message>
        <source>The tablet restarted: this time is not verified and not used. Let the pads dry, then start again.</source>
        <translation>La tableta se reinició: este tiempo no está verificado y no se usa. Deje secar los paneles y empiece de nuevo.</translation>
    </message>
    <message>
        <source>Press now: it was already there when you came, so it counts as an upper bound only.</source>
        <translation>Pulse ahora: ya estaba ahí cuando usted llegó, así que solo cuenta como límite superior.</translation>
    </message>
    <message>
        <source>Start the pump again before the pad dries, then go to the far end.</source>
        <translation>Arranque la bomba otra vez antes de que el panel se seque y vaya al extremo lejano.</translation>
    </message>
    <message>
        <source>Pads dry? Say who starts the pump, then press as it starts.</source>
        <translation>¿Paneles secos? Indique quién arranca la bomba y pulse cuando arranque.</translation>
    </message>
    <message>
        <source>Pads dry already? Press as the pump starts. Still wet? Choose Pump stops, then press as you stop it.</source>
        <translation>¿Paneles ya secos? Pulse cuando arranque la bomba. ¿Aún mojados? Elija La bomba para y pulse al pararla.</translation>
    </message>
    <message>
        <source>Press as the pump stops. What a bank has not shown by then is not timed in this run.</source>
        <translation>Pulse cuando pare la bomba. Lo que un banco no haya mostrado hasta entonces no se mide en este encendido.</translation>
    </message>
    <message>
        <source>Press as the pump stops.</source>
        <translation>Pulse cuando pare la bomba.</translation>
    </message>
    <message>
        <source>See the far end drip, then press as the pump stops.</source>
        <translation>Vea gotear el extremo lejano y pulse cuando pare la bomba.</translation>
    </message>
    <message>
        <source>Every bank drips: press as the pump stops.</source>
        <translation>Todos los bancos gotean: pulse cuando pare la bomba.</translation>
    </message>
    <message>
        <source>Stand at the far end of %1: press when water comes out there.</source>
        <translation>Párese en el extremo lejano de %1: pulse cuando salga agua ahí.</translation>
    </message>
    <message>
        <source>Watch under %1: press when it drips evenly and no dry streak is left.</source>
        <translation>Observe debajo de %1: pulse cuando gotee parejo y no quede ninguna franja seca.</translation>
    </message>
    <message>
        <source>Watch under %1: press when it stops dripping.</source>
        <translation>Observe debajo de %1: pulse cuando deje de gotear.</translation>
    </message>
    <message>
        <source>%1 dries: press at the first dry patch. Time another pump or enter settings meanwhile.</source>
        <translation>%1 se seca: pulse a la primera mancha seca. Mida otra bomba mientras.</translation>
    </message>
    <message>
        <source>to the next full minute on this tablet&apos;s clock</source>
        <translation>al próximo minuto completo en el reloj de esta tableta</translation>
    </message>
    <message>
        <source>since the pump started</source>
        <translation>desde que arrancó la bomba</translation>
    </message>
    <message>
        <source>since the pump stopped</source>
        <translation>desde que paró la bomba</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>%1 (already there)</source>
        <translation>%1 (ya estaba ahí)</translation>
    </message>
    <message>
        <source>± %1</source>
        <translation>± %1</translation>
    </message>
    <message>
        <source>stands out from the others; still used</source>
        <translation>se aparta de las otras; aún se usa</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::TemplateViewModel</name>
    <message>
        <source>The on-time ceiling is at least the base on-time</source>
        <translation>El tope de encendido es al menos el tiempo base de encendido</translation>
    </message>
    <message>
        <source>The on-time ceiling is below the period</source>
        <translation>El tope de encendido es menor que el periodo</translation>
    </message>
    <message>
        <source>The base on-time is below the period</source>
        <translation>El tiempo base de encendido es menor que el periodo</translation>
    </message>
    <message>
        <source>The review interval is a multiple of the period</source>
        <translation>El intervalo de revisión es un múltiplo del periodo</translation>
    </message>
    <message>
        <source>Pad hours end on the day on which they begin</source>
        <translation>El horario de los paneles termina el mismo día en que empieza</translation>
    </message>
    <message>
        <source>Each trim row is at more degrees than the one before</source>
        <translation>Cada fila de corrección tiene más grados que la anterior</translation>
    </message>
    <message>
        <source>every %1 %2, %3 to %4</source>
        <translation>cada %1 %2, de %3 a %4</translation>
    </message>
    <message>
        <source>pump start</source>
        <translation>arranque de la bomba</translation>
    </message>
    <message>
        <source>a full header</source>
        <translation>distribuidor lleno</translation>
    </message>
    <message>
        <source>What it is told of the water, and shows</source>
        <translation>Lo que se le ingresa del agua, y lo que muestra</translation>
    </message>
    <message>
        <source>A template needs a name.</source>
        <translation>Una plantilla necesita un nombre.</translation>
    </message>
    <message>
        <source>The template has no such setting.</source>
        <translation>La plantilla no tiene ese ajuste.</translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Guardado en %1</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::TemplatesViewModel</name>
    <message>
        <source>%1, settings: %2</source>
        <translation>%1, ajustes: %2</translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation>Copia de %1</translation>
    </message>
    <message>
        <source>Nothing is added. %1</source>
        <translation>No se agrega nada. %1</translation>
    </message>
    <message>
        <source>This template was removed here and can be brought back from Removed at the houses. Adding it makes a second one.</source>
        <translation>Esta plantilla se quitó aquí y se puede traer de vuelta en Quitados, junto a las casetas. Agregarla hace una segunda.</translation>
    </message>
    <message>
        <source>This template is here already, just as it is in the file. Adding it makes a second one.</source>
        <translation>Esta plantilla ya está aquí, tal como en el archivo. Agregarla hace una segunda.</translation>
    </message>
    <message>
        <source>This template is here already, but it is not the same as in the file. Adding it makes a second one; yours stays as it is.</source>
        <translation>Esta plantilla ya está aquí, pero no igual que en el archivo. Agregarla hace una segunda; la suya queda como está.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::VisitViewModel</name>
    <message>
        <source>Presses not stored yet: %1. They are kept on screen and tried again: go on timing. Why: %2</source>
        <translation>Pulsaciones sin guardar: %1. Siguen en pantalla y se reintenta: siga midiendo. Motivo: %2</translation>
    </message>
    <message>
        <source>Written to %1. Wetfront finds it there at its next start.</source>
        <translation>Guardado en %1. Wetfront lo encuentra ahí en su próximo arranque.</translation>
    </message>
</context>
<context>
    <name>wetfront::ui::WhatIfViewModel</name>
    <message>
        <source>found %1</source>
        <translation>encontrado %1</translation>
    </message>
    <message>
        <source>advised %1</source>
        <translation>recomendado %1</translation>
    </message>
</context>
</TS>
