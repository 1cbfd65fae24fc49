<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AdviceGroup</name>
    <message>
        <source>found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found %1, advised %2, left %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AdviceStep</name>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one period of the pump&apos;s cycle: found, advised, left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be entered, as %1 asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assumed or changed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AirFold</name>
    <message>
        <source>Air picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside, behind the pad, in the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the air outside, behind the pad and in the house</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AwakeWords</name>
    <message>
        <source>a reading is being timed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This tablet may go dark and sleep: touch it now and then. The time goes on all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This screen may go dark: touch it now and then. The time goes on all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This tablet may sleep: keep its lid open and touch it now and then. The time goes on all the same.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BankThumbnail</name>
    <message>
        <source>bank with its pump on the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bank with its pump on the right</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BusyPanel</name>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CautionBox</name>
    <message>
        <source>DANGER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ConditionsStep</name>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At each bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: air speed at several points, temperature behind, water caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flow by drawdown or meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For whoever wants to know more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How good the instruments are</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CopiesPage</name>
    <message>
        <source>Copies of the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the demo, no copies are made by themselves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the start of each day a copy goes into %1. It does not help when the tablet is lost or broken: a copy on a stick does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a stick or card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None is plugged in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for sticks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy of %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file that holds the records now is kept beside them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the records as they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to this copy</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DesktopRunWords</name>
    <message>
        <source>It could not go back to the copy %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records are now as they are in the copy %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file that they replace is kept as %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EntryUndo</name>
    <message>
        <source>Entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No entry to undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No entry to redo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FieldRow</name>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingCard</name>
    <message>
        <source>Harm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely, in this order:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the reason</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindingMapsWords</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Look: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Fold</name>
    <message>
        <source>open; %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>folded; %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FormLine</name>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: back to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FormModel</name>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HeaderFold</name>
    <message>
        <source>Flow by outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flow by outlet of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HouseDelegate</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>visit open</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HousePage</name>
    <message>
        <source>Look at the open visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on with the open visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not visited yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the visit of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove this house</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HouseStep</name>
    <message>
        <source>House</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad banks, seen from outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More about the header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1 out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sump, supply pipe and pump curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farm and its design day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HousesList</name>
    <message>
        <source>Houses</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HousesPage</name>
    <message>
        <source>Houses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No house yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe the first one: its pumps and banks, then time the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe a house</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LeavePanel</name>
    <message>
        <source>Stay here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close Wetfront</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the page</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LeavingStep</name>
    <message>
        <source>Before leaving the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LimitsFold</name>
    <message>
        <source>Margins and limits</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LockedPanel</name>
    <message>
        <source>locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold to unlock</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Wetfront, demo: nothing is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wetfront</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting templates: one for each controller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting template: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed: out of sight, and kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: its banks and visits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read only. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units and light</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarkLine</name>
    <message>
        <source>undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %2 (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarksAtHandWords</name>
    <message>
        <source>Pump starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water at the far end of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 drips evenly at the far end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stops dripping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First dry patch on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump back on automatic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressed twice: not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too soon for water: not used</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NamesCard</name>
    <message>
        <source>Take out %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NewHousePanel</name>
    <message>
        <source>New house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the visit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>Type hours and minutes, for example 09:30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave empty</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PadKeys</name>
    <message>
        <source>colon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PartsCard</name>
    <message>
        <source>Take over the change: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PreferencesPanel</name>
    <message>
        <source>Units and light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F, ft, gpm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C, m, L/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting templates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies of the records</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProblemBanner</name>
    <message>
        <source>Store now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put them in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProofLines</name>
    <message>
        <source>Set and seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set or expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen ± U (95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>verdict</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProofStep</name>
    <message>
        <source>press as it happens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I stand at (timer: %1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I stand at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bank that is watched, with the water where it should be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you see</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock the glass: only the mark button and undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else happened</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProofWords</name>
    <message>
        <source>%1 ± %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may differ by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as timed, at most %1 later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as worked out, at most %1 later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: expected %2; %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: expected %2; seen %3; %4</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PumpOffWords</name>
    <message>
        <source>Pump off for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump off: %1 left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the pump: %1 over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsCard</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressed late or by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks, newest first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReasonSheet</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RemovalLine</name>
    <message>
        <source>Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RemovedPage</name>
    <message>
        <source>Removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing of it is deleted. A house brings its visits back, but for those that were removed by themselves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is removed now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring back %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunningTime</name>
    <message>
        <source>elapsed %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SafetyStep</name>
    <message>
        <source>Who is here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed with the grower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The site is safe, the system is fit to be timed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SettingsStep</name>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over the advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the advice in place of what is entered?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep what is entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the advice in its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken over. Enter it in the controller, then check each line against it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it adapts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When pads may run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the controller itself was told and shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differs from the advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SettingsViewModel</name>
    <message>
        <source>Row %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetStep</name>
    <message>
        <source>Something is still open. Sign all the same?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Persons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type an instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last checked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strainer to be cleaned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlets to be cleaned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads to be replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump to be looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the dry-out on a cooler day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type an open point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the open point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signing freezes the visit; a correction is a new sheet that names this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name the person who signs first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StartProblem</name>
    <message>
        <source>Wetfront cannot open its records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wetfront has written nothing: the file is as it was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file can be read. Houses, visits and sheets are shown; nothing can be timed or entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open read-only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The newest copy that is whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file that cannot be opened is kept beside the records, as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to the copy of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepTabs</name>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>complete</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StopwatchPanel</name>
    <message>
        <source>Pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I stand at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it stops, the fans are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bank, with the water where it should be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No earlier visit, and no flow and header bore to work it out from: only the time is shown.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StopwatchQuestions</name>
    <message>
        <source>Who stops the pump?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who starts the pump?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I, here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I, and walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dripping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplateCard</name>
    <message>
        <source>Cannot be used yet. %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplateGroup</name>
    <message>
        <source>On the controller: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplateImport</name>
    <message>
        <source>Add a template from a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found in %1 and on what is plugged in:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No file is in %1, and none on a stick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another file, with its folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at that file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Don&apos;t add it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add this template</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplateOrder</name>
    <message>
        <source>In this order it asks</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplateOrderLine</name>
    <message>
        <source>%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1 up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move %1 down</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplatePage</name>
    <message>
        <source>Cannot be used yet. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The controller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its on-time counts from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it demands between settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a file, for another tablet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write to documents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for sticks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stick is plugged in.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplateProblemsWords</name>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between settings</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplateSettingForm</name>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the controller writes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps count from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TemplatesPage</name>
    <message>
        <source>Setting templates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe a controller once: which settings it has, what it calls them, and which steps it can hold. Advice then comes in its words and steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of your own yet. Make one from a plain one below, or add one from a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make one from this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make one from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add one from a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain ones, to start from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>generic, stays as it is</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TimeStep</name>
    <message>
        <source>press now: it was already there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press as it happens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock the glass: only the mark button and undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back on automatic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump is back on automatic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the pump back on automatic?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This ends the reading that runs. Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on timing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is on automatic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it happens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Already there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was already there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go there</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TimingWords</name>
    <message>
        <source>%1 readings, spread %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one reading, spread as on the other banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one reading, spread assumed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ToEnterLine</name>
    <message>
        <source>cannot be held</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TopLine</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UndoLine</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WhatIfFold</name>
    <message>
        <source>What if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move period and on-time, see the cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one period of the pump&apos;s cycle: found, what if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in every %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to what was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is found against these settings.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>A run of %1 in every %2 keeps every part of the pads wet at the hottest hour: it cools as continuous pumping does, with less pumping.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer has no rinse, and short runs leave a dry pad dry for a long time: run the pump by hand for %1 when the pads start each day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer has no rinse, and short runs leave a dry pad dry for a long time: run the pump by hand until the far end drips evenly when the pads start each day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More evaporated during the readings than the farm&apos;s design day would: check its design temperatures (design against readings: %1). What is advised holds for the weather of the readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer runs the pump all the while the pads are called for: nothing to set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer runs the pump all the while the pads are called for: no cycle to set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pad bank is fed by this timer&apos;s pumps: describe them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Continuous pumping for now. A cycle needs more, first: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Continuous pumping: no cycle could be worked out (%1).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Continuous pumping, and more flow: at the hottest hour a pad dries faster than water comes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Continuous pumping: with a rest of %1 in %2, %3 would not stay wet at the hottest hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seeing a drip or a dry patch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a start by signal %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seeing the first dry patch %1 of the dry-out time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hottest hour no milder than the weather of the readings (worked out: %1 of its evaporation)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest step of a timer %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pad effectiveness %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A timer makes no extra cooling and no drier air. Pumping all the while the pads are called for is the reference; a cycle is as good only if every part of the pad stays wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The margins and limits that were changed for this farm cannot be used together (%1): everything is worked out with the program&apos;s own until that is put right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: fill time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: wet-through time from a dry pad (or a wet start)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: wet-through time clearly above the fill time; time both again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: dry-out time with the fans running (or a wet start)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: wet start with the fans running all the while</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: readings in drier air (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a design day on which water evaporates: check dry and wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower: pads run while moving air alone would do, and make the house damp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower: pads may run in a cooler house.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower: pads stop while they would still cool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier: pads run before they are of use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier: pads stop while they would still help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorter: the pump starts more often and has less time to rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorter: at the hottest hour the far end gets less water than dries there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower: on a hot afternoon a run can&apos;t be made as long as a dry pad needs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller: the on-time follows the heat slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrower: the on-time answers to small changes of temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorter: it trims again before the house has answered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier: the pads are wet before they are of use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorter: the rinse may not reach every part of the pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Higher: the birds get warmer before pads help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Higher: pads are off in a house that is warmer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Higher: pads run in air that they hardly cool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later: pads are off while they would help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later: pads go wet into the humid night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer: the far end waits longer for water and dries further.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer: more water is pumped than the pads take up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Higher: runs may grow longer than wets the pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger: each review changes the on-time by more, and it may swing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wider: the on-time answers later to heat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer: the on-time follows the heat slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later: dust and salts stay in the pads for longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer: it pumps longer than the rinse needs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>evaporation at the hottest hour, against that of the test: worked out %1, counts as 1 so that the pad stays wet in the weather of the test as well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>evaporation at the hottest hour, against that of the test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet-through time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry-out time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump-off time of the wet start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>return of the drip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest step of the timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enough water for %1 at the hottest hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filling the header of %1 takes %2. The rest of the run gives its pad what evaporates in %3 at the hottest hour, with a margin and the uncertainty of the readings on top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 How much of the water evaporates is taken from the measured flow and the air: that is more than the stopwatch gives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>period</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the water that evaporates, test, by the measured flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the water that evaporates, test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water at the far end over the weakest outlet&apos;s, in kappa already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no part of the pad dries between two runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From stop until water is back at the far end of %1, its pad gets nothing. At the hottest hour that may last %2, so the pump runs for the rest of the %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the dry-out time that a gap may take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water reaches the far end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next to nothing evaporates, so the run only has to fill the header of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shortest rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shortest period that leaves a rest of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Periods are tried from short to long; %1 is the first in which the pump can rest for at least %2 while every part of the pad stays wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>period tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base on-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the base already keeps the pad wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The base on-time keeps every part wet at the hottest hour. A longer run would pump more water and cool no better, so there is nothing to trim up to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as long as wetting a dry pad takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No run needs to be longer than the slowest wet-through time. Trimming above the base changes how much is pumped, not how much is cooled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longest wet-through time with its uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>so that the pump still rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A longer run would leave less than %1 of rest. Trimming above the base changes how much is pumped, not how much is cooled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on-time ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing to trim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base and ceiling are the same, so there is nothing to trim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>four steps from base to ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One row: when the house is warmer than the dead band allows, the on-time gains this much at a review, and four of them reach the ceiling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no change within %1 of target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within %1 above or below target the on-time stays as it is, so that it does not chase every draught at the sensor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dead band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time for the house to answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A change of on-time shows in the house only after about %1. The review is the first whole number of periods that is shorter neither than that nor than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time the house takes to answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the first call of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse at the first call inside pad hours, once the start temperature is reached and the tunnel fans run. Never on cold or young birds. Where the timer wants a clock time, take the start of pad hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse at the first call inside pad hours, once the start temperature is reached and the tunnel fans run: on a mild day that is later, or never. Never on cold or young birds. Where the timer wants a clock time, take the start of pad hours, %1, and only in the hot season.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wets a dry pad through and changes the header&apos;s water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the fans on at the hottest hour a dry pad of %1 drips after %2; %3 more change the water in its header. Sump and make-up must carry it: watch the sump at the first rinse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of drying at constant rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet-through with the fans on at the hottest hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time to change the header&apos;s water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet-through was not timed from a dry pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was timed from a wet pad, so nobody knows yet how long a dry one takes. Rinse by hand until its far end drips evenly, and time that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pump runs all the while it is called for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On-time and period are the same, so the pump does not rest while the pads are called for. No timer cools better than that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it off: the pump does not rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the pump on all the while there is no run to trim and no dry pad to rinse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this timer has no such setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer runs the pump all the while the pads are called for. That is continuous pumping: there is nothing to set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: at the hottest hour it needs %2 of pumping in %3 (%4 of it to fill the header), and %5 is the most that leaves a rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 The readings are too uncertain for any cycle: time them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 More flow (about %2 of what it gets now), a shorter bank on this pump (about %3 of its length) or a second feed would help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a rest of %2 and %3 to fill leave the far end without water for %4, and at the hottest hour it may go without for %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Even a header that stays full leaves no room for a rest: let the pump run while the pads are called for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Filled within %2 it could rest. A header that stays full, a second feed or a shorter bank on this pump would help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: at the hottest hour its pad dries faster than water comes, even with the pump always on. Give it more flow, more than %2 of what it gets now: clean outlets and strainer, a stronger pump, or a shorter bank on this pump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bank %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timer %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, changed for this farm (the program&apos;s own: %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water margin %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shortest rest %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of the dry-out time that a gap may take %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>share of drying at constant rate %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>periods tried: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time the house takes to answer %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trim dead band %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start temperature with older birds %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start temperature %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>older birds: from %1 days on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air down the house before pads are used: at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least cooling that is worth the damp %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside temperature from which no humidity stops the pads %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest step of a humidity %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pads are to be dry by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pad counts as dry with %1 of its face wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pad not dry %1 after its last run does not dry that night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock ahead of the sun by %1 (summer time, longitude)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest step of a time of day %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ending earlier would leave birds without pads while it is hot outside, so the hours are not shortened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the pads take to dry is not known, as not every bank was timed until its first dry patch: the hours end by the weather alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the design day the pads will not dry that night: the slowest is still wet %1 later. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the fans on, the slowest pad is dry at %1, later than the %2 that would be good. %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the fans on, the slowest pad is dry at %1, before the night (%2): one dry-down a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>design day: hottest outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>design day: wet bulb at that hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>design day: warmest minus coolest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock ahead of the sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from then on pads help on the design day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the design day it is at or above the start temperature, %1, outside from %2 on, and the pads cool by at least %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pads dry by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time until the slowest pad is dry, fans on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cooler outside than the start temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the design day it is cooler outside than the start temperature, %1, from %2 on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too damp outside for pads to cool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the design day the air gets too damp: from %2 on pads cool by less than %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not hot enough on the design day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even at the hottest hour of the design day it is cooler outside than the start temperature, %1: check the design day, or leave the hours open and let the start temperature decide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too damp on the design day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even at the hottest hour of the design day pads cool by less than %1: the air is too damp. Check the design day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no start temperature is advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours are the hours in which it is hotter than the start temperature, and for birds of this age none is advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pads are described</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the farm&apos;s design day is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours come from the farm&apos;s design day: enter its temperature, the wet bulb at that hour and the daily range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the design day&apos;s range is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How hot the other hours of the design day are follows from its daily range, warmest minus coolest: enter it with the farm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the design day cannot be used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The farm&apos;s design day cannot be used as it was entered; what is wrong with it stands with what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the design day the air holds as much water all day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours cannot be worked out: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave them open: pads help day and night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the design day it is at or above the start temperature, %1, outside day and night: no hour may keep the pads off. They will not dry between the days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After a day as hot as the design day these pads stay wet all night: dry them out on the first cooler evening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done: no run of the pump was watched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged: the settings left were changed after this was watched. Watch again, from run number %1 after the change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged: how many runs went by since the last change was not entered; the first that counts is number %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not judged yet: too early after the change of a setting. The first run that counts is number %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Failed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too close to call: %1. Watch another cycle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not complete: nothing failed, but this is missing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passed: the far end drips evenly and no part of the face is dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passed: the pads run as set. Runs that count: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fill time of every bank, as this controller counts from a full header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 as left in the timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too close to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not complete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Period</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water at the far end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drip is back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drip before the stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even drip at the far end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry patch on the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass: what was seen, with its uncertainty U (95 %) on both sides, lies within what is expected and its tolerance. Fail: it lies wholly outside. Else too close to call. Runs before the third after a change are not judged; an uneven drip or a dry patch fails.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A start in between was not marked: what was seen is a whole number of periods.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take that mark back and watch one more period from start to start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The controller takes what was entered as the period for the time between two runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look up what its setting means; if it is the rest, enter period minus on-time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another period stands in the controller than on the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the setting back on the controller, with its unit, and see that it was stored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The controller counts the on-time from a full header: the run is longer by the fill time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look up where its count starts; if so, take the fill time off what is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time was entered as counted from a full header, but the controller counts from the start: the run is shorter by the fill time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look up where its count starts; if so, add the fill time to what is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another on-time stands in the controller than on the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A review has trimmed the on-time already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the on-time that the controller shows now and enter it as the shown on-time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump starts late or drops out: relay, contactor or overload.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand at the pump when the controller switches: is its output on and the pump still? Relay, contactor and wiring are for a licensed electrician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump runs on after the controller has switched off: a contactor that sticks, or a hand switch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the hand switch first; contactor and wiring are for a licensed electrician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else switched the pump: start temperature, lowest house temperature, humidity cut-off or pad hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read house temperature, humidity and clock on the controller while you watch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump loses its water while it rests: a check or foot valve that leaks, or air on the suction side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Listen at the start for a pump that runs dry, and watch the first outlets: spitting means air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less flow than when it was timed: strainer, filter or a valve that is not fully open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean strainer and filter, look at every handle, then time the fill again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clogged outlets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look along the face from the side with the pump running, trace each dry streak up to its outlets, and flush the header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water is led astray between header and pad, or the header does not hang level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look under the header&apos;s cover above the dry patch, and along it with a level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pads were not wet through when the cycle began.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the pump until the far end drips evenly, let three cycles pass, then watch again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air is drier now than when the pads were timed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure outside temperature and humidity again and enter them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time is too short for these pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the water again, work out new settings and prove those.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assumed, can be changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounded up from %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounded down from %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounded from %1 to the nearest step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would have to be %1; this controller holds %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved from %1 into what this controller holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row is not used: no change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This row is not used, but it cannot be set to no change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This on-time counts from a full header, and no fill time is known: the number counts from pump start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from pump start, less %2 for filling the header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As long as the period of %1, so that the pump runs without rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A period of %1 needs a run of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not below the base on-time of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next multiple of the period from %1 up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller has no setting for: %1 (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 trim rows are wanted; this controller has %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too short: in a period of %1 the pads need a run of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves the pump less than %1 of rest in a period of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above the band for a start temperature, which ends at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above the start temperature of %1, which could then never start the pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller demands more degrees than in the row before, %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller demands a ceiling not below the base on-time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller demands a ceiling below the period: it cannot run without rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller demands a base on-time below the period: it cannot run without rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller demands a multiple of the period, and holds none that is long enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller demands pad hours that end on the day on which they begin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not used: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discharge coefficient of an outlet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a level header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump&apos;s drawdown is not used: its water surface is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by sump drawdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by catches at outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by bucket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worked out from the head at the header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worked out from the pump curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not usable: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air pressure %1 (sea level)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most water evaporates at the hottest hour of the design day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside temperature at the readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside humidity at the readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the farm&apos;s design temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wet bulb at the farm&apos;s design temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how far the best pad cools towards the wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least cooling that is worth the damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for birds from %1 days on, with all tunnel fans on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Older birds of this farm are to get pads from %1 to %2 on, as somebody chose; published are the low to mid 80s °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Older birds need pads from the low to mid 80s °F, %1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: below that, moving air does it and pads only make the house damp. Start them only with all tunnel fans on and at least %2 of air down the house.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coolest start with older birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warmest start with older birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least air speed down the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air speed down the house, fans over cross-section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>young birds: pads off but against heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The birds are %1 days old. What is published holds for older ones, here from %2 days on: young birds are chilled by wet, moving air. Leave the pads off but against heat, and ask the grower from which house temperature that is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grower&apos;s own limit, below the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hard limit apart from the start temperature: strictly below it the pads are off, whatever else calls for them. No number for it is published, so none is advised: agree on it with the grower. It has to lie below the start temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above it pads cool by less than %1 at the start temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With more than %1 outside, pads as good as these cool air of %2 by less than %3: the house gets damp for next to nothing. In hotter air they cool more at the same humidity: from %4 outside no humidity may stop them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: the sensor hangs in the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The humidity sensor hangs in the house or behind the pads, where the pads make the air damp themselves: a cut-off would shut them off while they work. Leave it off, or hang the sensor outside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where does the humidity sensor hang?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No humidity sensor is described. A cut-off serves only where the sensor hangs outside: describe it with the house. Without one, leave the cut-off off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cut-off is worked out at the start temperature, and for birds of this age none is advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the start temperature these pads cool by less than %1 in any air, or what was entered cannot be used (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which sensor does it read?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity is sensed outside and in the house. Where this timer reads the sensor outside, %1 is the cut-off; where it reads the other, leave it off, as the pads would shut themselves off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The age of the birds is not entered: the start temperature holds from %1 days on, and younger birds need another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air speed down the house is not known: enter the fans&apos; airflow and the cross-section. Pads want at least %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air goes down the house at %1: pads want at least %2. Bring the fans up first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lowest house temperature is set to %1, not below the start temperature advised, %2: lower it, or it decides when pads start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer has no pad hours: let what calls for these pads do so between %1 and %2 only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer has no start temperature and no pad hours: let what calls for these pads do so from %1 on in the house, with all tunnel fans on, and between %2 and %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer has no start temperature: let what calls for these pads do so from %1 on in the house, with all tunnel fans on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Customer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Service firm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets the air pressure; without it, sea level is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Design day: hottest outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day that the settings must carry; without it no cycle is advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Design day: wet bulb at that hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much a pad evaporates then; without it no cycle is advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Design day: warmest minus coolest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the hours in which pads help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margins and limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At a flow of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A point of the pump&apos;s curve; without a curve, the measured flow is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it lifts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sump volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must hold what drains back at a stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water surface of the sump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turns a fall of the level into a flow, and what drains back into a rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sump: working level to overflow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What drains back at a stop must fit; without it, that is not checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make-up flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must carry what evaporates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries salts away; without it, what would be needed is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Riser volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled before the header; without it, from the supply pipe, or none is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply pipe: length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From pump to header; for the riser&apos;s volume and its loss.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply pipe: bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Header above the sump&apos;s water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the pump lifts before anything flows; with its curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other outlets from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen from the pump end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bore there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End with the pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shares the pump&apos;s flow; without it, no flow per length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water evaporated down the pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the expected cooling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Header bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pipe volume, for the fill time to expect and the rinse; without it, three fill times are rinsed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which outlet gets least; without it, all are assumed to give the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discharge coefficient of an outlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without it, 0.6 is assumed, a drilled hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the outlets&apos; area that is clogged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted as lost evenly; without it, none is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far end of the header above its pump end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level decides where water goes first; without it, the header is assumed to be level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step of an on-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice is rounded to it; without it, 1 s is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step of a period</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without it, any period is assumed to be possible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hangs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>House</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Airflow of the fans that run with the pads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the water evaporated and the air speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cross-section of the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the air speed over the birds; without it, that is not checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sensors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On-time changes by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowest house temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity cut-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base on-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On-time ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Review interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered wet-through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown on-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump meant to run without rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it differs from the advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest time the pads may be off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed with the grower before any pump is stopped; it counts down on every page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>House temperature at which the test stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed with the grower before any pump is stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured flow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By sump drawdown with the make-up shut, or by meter. Checks the stopwatch; a second opinion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sump drawdown: fall of the level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make-up shut, from the pump&apos;s start and only until water comes back from the pads. The surest way to a pump&apos;s flow; needs the sump&apos;s water surface.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sump drawdown: time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By meter: volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By meter: time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By bucket under the whole flow: volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quick, but sure to 5 % only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By bucket: time to fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost by leaks and drift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carries salts away as bleed does; without it, none is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air speed at the pad face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least five points along the pad; the speed changes a lot from one to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outlet caught at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the pump end. Catch 30 to 60 s at each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume caught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time to fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature behind this pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One bank against another; without it, the one for all banks counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure drop through this pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From outside to just behind it; rises as a pad clogs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head of water at the header&apos;s inlet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where no flow was measured, the header&apos;s flow is worked out from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water caught at outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today&apos;s weather against the design day; without it no cycle is advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside wet bulb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In place of the humidity; counts only where that is not entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In place of the humidity; counts only where neither that nor the wet bulb is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Barometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station pressure; without it, from the farm&apos;s elevation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature behind the pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measures how well the pad cools; without it, the published value for new pads or 75 % is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>House temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>House relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Static pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compared with earlier visits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean of at least five points; for the expected cooling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer good to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For how sure the measured cooling is; without it, 0.5 °C (0.9 °F) is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hygrometer good to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For how sure the measured cooling is; without it, 3 % is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age of the birds in days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardness as CaCO3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calcium hardness as CaCO3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the scaling indices; without it, the whole hardness is assumed to be calcium.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alkalinity as CaCO3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the scaling indices.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dissolved solids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the scaling indices; without it, from the conductivity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the make-up water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conductivity of the make-up water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the sump&apos;s: how far salts have gathered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the sump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rises as salts gather; without it, the indices are those of the make-up water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conductivity of the sump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With that of the make-up water: how far salts have gathered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the sump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the scaling indices; without it, 25 °C (77 °F) is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The far end drips evenly before the pump stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A dry patch somewhere on the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First run watched, counted from the last change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1: the first run after a setting was changed. Runs before the third are not judged: the pads need them to settle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Persons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proof run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the controller writes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s, min or h; degC or degF; %. Left out for a time of day, whose numbers are minutes after midnight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In that unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In that unit; steps count from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its on-time counts from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many it has.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the order in which the controller asks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it demands between settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Harm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coolest start with older birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below it, moving air does it and pads only make the house damp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest start with older birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By then they need pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start temperature to advise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the coolest and the warmest start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Older birds: from that age on, in days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breeds differ; younger birds are chilled by wet, moving air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air down the house before pads are used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving air comes first; pads add to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least cooling that is worth the damp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets the humidity cut-off and ends the pad hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot outside: no humidity stops pads from there on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not below the start temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step of a humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cut-off is rounded down to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads dry by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A time of day after noon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pad counts as dry with that much of its face wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For how long pads stay wet after their last run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest time until a pad is dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pad that takes longer does not dry that night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock ahead of the sun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By summer time and by where in its time zone the farm lies; pad hours go by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step of a time of day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours are rounded outward to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water in a run over what evaporates in a period at the hottest hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shortest rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where pads leave less time than this, the pump runs without rest. Ask what its motor stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the dry-out time that a gap may take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the far end may go without water between two runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of drying at constant rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How a pad dries: for the rinse, for dry-down, and whether water keeps up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Period tried first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Period tried next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the first leaves no rest; not shorter than the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the house takes to answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A review comes no sooner than a change of on-time shows in the house.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim dead band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Within it the on-time stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim row: change of on-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim row: degrees above target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When pads may run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it adapts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DANGER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WARNING</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOTICE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other bank was not bone dry at its start, or drips before it is wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry both to the core, look for dry paper between wet streaks, and time both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once its header is full, %1 takes %2 to drip, %3 on the same pump only %4. The slower bank sets the on-time of both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the cause, likeliest first, then time both banks again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water takes %1 to the far end of %2, but %3 to that of %4, which has the same header on the same pump: every run pumps %5 longer for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gets %2 of pad, %3 less than the %4 of %5: it wets later and is rinsed less, and one timer for both has to serve it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the cause, likeliest first, then measure both flows again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Until it drips, %1 takes up water for %2 of its pad&apos;s volume, %3 for %4 of its own: it drips before it is wet, or was not dry, and its wetting time is then up to %5 too short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for dry paper between wet streaks; if there is none, dry both banks to the core and time them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gives %2 of the possible cooling, %3 gives %4: air behind the worse one is %5 warmer for it %6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the cause, likeliest first; read both banks with one thermometer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump or fan that starts by itself: it crushes or cuts off hands. Before you reach in, know every source of energy, shut down, switch off at the isolating device, lock and tag it, let moving parts come to rest and pressure go, try to start it, then work. In the United States, 29 CFR 1910.147 asks this for a service firm&apos;s people; it does not cover farm employment, where 29 CFR 1928.57(a)(6) asks for instruction at first assignment and every year, and for everything stopped, at rest and its power locked out before maintenance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Electricity where everything is wet: a shock kills. Use receptacles with ground-fault protection, switch off at the isolating device before a cover comes off, and leave wiring to a licensed electrician. In the United States, NEC article 547 is for farm buildings; look into the edition adopted where you are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleach with acid or with ammonia: the gas that forms can kill. Descaling acid and bleach meet in this very job: never let them mix, drain and rinse between them, give air, wear gloves and eye protection.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fan blades behind a missing or open guard: deep cuts, lost fingers. Keep guards on while a fan can turn; blades lower than %1 need guards with openings of at most %2. Put no meter and no hand through a guard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fall from a ladder at the header: broken bones, or death. Foot out one for every four up, rails %1 above the landing, face it, three points of contact, no metal ladder near live parts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work in the heat: heat stroke can kill. Drink water every %1 and rest in the shade; the risk is high from a heat index of %2, very high above %3. The first week is the worst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bacteria in warm recirculated water: breathed in as fine spray they can make you severely ill. Sludge, scale and algae feed them between %1 and %2. A running pad was measured to carry over very little, yet an untreated sump grows them within weeks; pressure washing, flushing the ends and cleaning the sump make spray. Keep the sump clean, stay out of the spray, wear breathing protection where you can&apos;t.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sump water drawn back into drinking water: it makes people and birds ill. Keep an air gap of at least twice the inlet&apos;s diameter and at least %1; a float valve with its outlet under water has none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet concrete, algae, heavy pads: a fall or a strained back. Wear soles that grip, walk, keep the way between pump and far end clear, and lift with a second person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birds without cooling: in extreme heat a flock can be lost in minutes. Agree a stop temperature and a longest pump-off time with the grower before a test, prefer an empty or a cool house, keep the fans running, have back-up power tested, and look at every switch before you leave.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disease carried from farm to farm: it can cost the flock. Keep the line of separation, clean equipment and footwear, and take farms and houses in the order agreed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local codes and the farm&apos;s own rules come first; wiring and drinking-water pipes are work for licensed trades.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farm&apos;s biosecurity rules kept: clean footwear and equipment, line of separation, order of houses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isolating devices of pumps and fans found; lock and tag at hand for work inside guards or wiring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground-fault protection tested on what is plugged in near water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fan guards in place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ladder sound, footed and clear of live parts, or not needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chemicals in and near the sump known; bleach and acid kept apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drinking water and rests planned for work in the heat; somebody knows where I am</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest pump-off time and stop temperature agreed with the grower, before any pump is stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back-up power of this house tested, as the grower reports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sump full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strainer clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Header outlets clean and running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Float valve works</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No leak at pump, riser, header or sump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>My locks and tags removed, guards and covers back in place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every pump back on automatic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every fan back on automatic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breakers on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make-up water open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flush valve shut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm armed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grower told what was changed and what is still open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gives %2 (%3), %4 of pad where %5 is the published least: %6 is missing, weak outlets leave dry streaks, and dry edges scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the flow up: find the cause, likeliest first; where all is clean and open, a larger pump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether %1 gives its pads enough water is too close to call: %2 ± %3 is %4 of pad where %5 is the published least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the flow again by sump drawdown with the make-up shut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gives %2, %3 times the %4 that its pads evaporate at the design hour; about %5 times is published, or %6. With less, little is left over to rinse salts off the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the flow up, and rinse the pads more often until then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flow of %1 is %2 %3 but %4 %5: %6 apart, where their uncertainties explain at most %7. All that is worked out from it is that unsure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat the sump&apos;s drawdown with the make-up shut and before water comes back from the pads; if it stands, look for leaks or clogged outlets between pump and catches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flow of %1, %2 %3, is known only to ± %4: all that is worked out from it may be off by %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the humidity outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the temperature behind the pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the temperature outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only %2 of the possible cooling is reached behind %1, where %3 is published for this air speed and thickness: the air is %4 warmer than it could be %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the cause, likeliest first; then read both temperatures again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the readings %2 of the possible cooling is reached behind %1, where %3 is published, but they are good to ± %4 only: too close to call. Most of that comes from %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it again in a drier hour, and %1 with a better instrument.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the readings %2 of the possible cooling is reached behind %1, where a clean new pad gives %3: a reading is wrong, and so is all evaporation worked out from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read temperature and humidity outside, and temperature behind, again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer behind the pad that is wetted by drops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shield it from drops and read it again a step farther in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A humidity reading that is too high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the hygrometer hang in the shade for ten minutes; compare it with a wet bulb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The controller was told a %1 of %2, but %3 takes %4: every run that it works out from that ends %5 too soon for the far end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The controller was told a %1 of %2, but the slowest, %3, takes %4: every run that it works out from that pumps %5 too long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter %1, the reading and its uncertainty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another setting or an earlier trim changes the on-time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through every page of the controller that speaks of pads; let one review pass and read it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time counts from a full header, and what is shown is the whole run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time one run from pump start to pump stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The timer shows an on-time of %1 now, but its settings allow no less than %2: pads get %3 less in every run than is set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The timer shows an on-time of %1 now, but its settings allow no more than %2: it runs %3 longer in every period than is set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 in an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find out what sets the run before anything else is changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This controller counts its on-times from a full header, and no fill time is known: how long the pump runs, and so whether the pads get enough, is not judged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the fill of every bank on this timer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pipe from pump to header, which is not entered, holds the difference.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter its length and bore, or time the water to the pump end of the header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water takes %1 ± %2 to the far end of %3; at %4 about %5 is to be expected, at most %6. Every run pumps %7 longer before the far end gets water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the cause, likeliest first, then time the fill again: settings built on this one carry the loss along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water is at the far end of %1 after only %2 ± %3; at %4 about %5 is to be expected, at least %6. If the header was not empty, an on-time built on this is up to %7 short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the fill again from an empty header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set it to between %1 and %2, with all tunnel fans on before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may start at %1, %2 below the %3 from which older birds need them: air is wetted where moving it would do, litter gets damp, and water is used for little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads wait until the house is at %1, %2 above the %3 by which birds of %4 days need them: they stand that much hotter before any cooling begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With all fans that run with the pads, air goes down the house at %1, below the %2 that older birds should have before pads are used: %3 is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the air speed first: belts, shutters and blades clean, every fan running, leaks of the house closed; then more fans. Guards stay on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the humidity cut-off to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may run up to %1 humidity outside, but at %2 they cool by only %3 there: the house gets damp for next to nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads stop at %1 humidity outside, where at %2 they still cool by %3: that much cooling is lost although it is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As entered, the header of %1 would not bring water to its far end at %2, yet water was timed there after %3: flow, bore, outlets or slope are not as entered, and all that follows from them is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the flow again, and the header&apos;s bore, outlets and slope.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1 the first outlets of %2 take all the water before the header is full: little or nothing reaches the far end, and that pad stays dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More flow, or fewer or smaller outlets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1, %2 of the %3 outlets of %4 get no water: the pad below them stays dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level the header; if that is done, more flow or smaller outlets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A header that rises or sags along its length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sight along it, or hold a level to it at both ends and the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weakest outlet of %1 gives %2 less than the strongest (a good header: at most %3); to wet the pad below it takes %4 more pumping than the mean outlet would need.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wider header, one fed in the middle, smaller outlets at more head, or the weak stretch cleaned and levelled; until then the advised on-time serves the weakest outlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 takes a head of %2 for %3, where clean outlets would ask for %4: its outlets pass about %5 of what they should, and the pump works against the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flush the header through its far end, clean the outlets, read flow and head again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 passes %2 at a head of only %3, where its outlets would ask for %4: water leaves by %5 of their area, and what does not go through outlets does not wet the pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find where water leaves the header, then read flow and head again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the humidity cut-off to %1, as advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the humidity cut-off above %1, or leave it off: in such heat no humidity may stop the pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The humidity cut-off of %1 stops the pads for %2 of the design day in which it is %3 or hotter outside: at up to %4 and %5 birds lose %6 of cooling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With %1 and %2 outside at the readings, the humidity cut-off of %3 kept the pads off in heat in which birds need them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The humidity sensor hangs in the house, where wet pads make about %1, above the cut-off of %2: the pads shut themselves off while they work, most of all when it is hot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the cut-off off, or hang the sensor outside, in the shade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads stop above %1 humidity, but no humidity sensor is described: in the house it would read the damp that pads make, outside it would not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look where the sensor hangs and describe it with the house.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads stop above %1 humidity, and humidity is sensed both outside and in the house: if the timer reads the one in the house, pads shut themselves off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find out which sensor the timer reads, and let it be the one outside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads stop above %1 humidity in the house, which pads make themselves: on damper days than the one looked at they shut themselves off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an on-time of 0 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pad hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the humidity cut-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lowest house temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the start temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the design day %1 keeps the pads off for %2 in which it is %3 or more outside, up to %4: from there on moving air alone heats birds, and a flock can be lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the hottest hour of the design day, %2, %1 keeps the pads off: from %3 on moving air alone heats birds, and a flock can be lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change that setting now, so that pads are there in such heat; where pads are off in it, restore them at once. Never stop fans.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump draws air: a leak on its suction side, or a pipe that empties between runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch the first outlets while the header fills: spitting and bubbles mean air. Tighten the suction side, then time again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clogged filter or strainer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the pressure before and behind the filter; clean filter and strainer, then measure the flow again by sump drawdown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A valve that is not fully open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the pipe from the pump to the header and look at every handle; open it, then time again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A worn pump, or one that turns the wrong way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With filter clean and valves open, compare flow and head with the pump&apos;s curve or an earlier visit; motor and wiring are for a licensed electrician.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A leak in the pipe from pump to header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk along the pipe while the pump runs and look for water; compare the flow by sump drawdown with what is caught at the outlets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the head at the pump end of the header: more head with less flow means outlets, less head means pump, filter or valve. Flush the header and catch water along it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water is lost on the way: flush valve, end cap or a joint of the header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk along the header while it fills; shut the flush valve, look at cap and joints.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The header was not empty when the pump started.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it drain until no outlet drips, or open the flush valve, then time again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bore, outlets or supply pipe are not as entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the header&apos;s inside bore, an outlet and the supply pipe, and correct the entries.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A scaled pad: it drips before it is wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feel the face and the lower edge while it drips: crust, and dry paper between wet streaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water is held up or led astray between header and pad, or by a blocked gutter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look under the header&apos;s cover and along the gutter for water that does not go through the pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pad that was not bone dry when the pump started.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the fans with the pump off until the pad is dry to the core, then time again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry streaks: outlets clogged, or too little water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look along the face from the side with the pump running; trace each dry streak up to its outlets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air that goes around the pad: gaps at the frame or between pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a strip of tissue along the frame, above and below the pad with the fans running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air faster than the pad is made for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the air speed at five points or more of the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer in the sun, in spray or close to a warm wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both places again with the same thermometer, shaded and dry, in moving air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passages of the pad clogged by scale, algae or dust.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shine a lamp through the pad and look; compare with a clean stretch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs bring %1 of the water that a pad evaporates at the hottest hour, not %2 as the program would: where an outlet clogs or a day is hotter, the far end is the first to dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rests of %1 are advised where the program asks for %2: a pump that is started again so soon wears, and its motor has less time to cool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The far end may go without water for %1 of the time that it stays wet, not %2 as the program would: that leaves %3 of it for a hotter day and an error of the stopwatch before it dries, cools less and scales.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a share of drying at constant rate of %1 and not %2, a pad is taken to dry more slowly at first: rinses get shorter, and that it dries faster than water comes is found later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may start as late as %1, %2 above the published band: older birds stand that much hotter before any cooling begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may start as early as %1, %2 below the published band: air is wetted where moving it would do, and litter gets damp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birds count as older from %1 days on, not from %2: the start temperature and the rinse then hold for birds that wet, moving air can chill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads count as usable from %1 of air down the house on, not from %2: slower damp air takes less heat off birds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads count as useless until they cool by %1, not by %2: the humidity cut-off and the pad hours take away that much cooling where it is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to %1 outside, and not only up to %2, humidity may stop the pads: birds are without them in that heat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may stay wet until %1, not only until %2: the house is damp for longer into the night, and litter with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The margins and limits that were changed for this farm cannot be used together (%1): advice and findings are made with the program&apos;s own, which nobody here may have wanted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put that limit right, or set it back to the program&apos;s own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set it back to %1, or make sure that whoever chose it knows that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads help for %1 on the design day in which the pad hours keep them off, at up to %2 with a start at %3: as the sun&apos;s hours are not the clock&apos;s, that is too close to call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the hours open: on the design day pads help day and night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let pads run from %1 to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours end at %1, but on the design day it is at or above the start temperature of %2 long after: %3 without pads, at up to %4 outside, up to %5 hotter than need be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours begin at %1, but on the design day it is at or above the start temperature of %2 long before: %3 without pads, at up to %4 outside, up to %5 hotter than need be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting damp air, after which they stay wet all night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting damp air, and the slowest pad is dry only at %4, later than %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may run until %1, but on the design day they stop helping at %2: %3 of wetting damp air, into the night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the pad hours at %1, so that pads dry once a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may run from %1 on, %2 before they begin to help on the design day: it is %3 outside, and birds&apos; heat alone can call for pads in damp morning air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin the pad hours at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours begin and end at %1: on one timer that is all day, on another never, and then birds get no pads at all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set an end that differs, or see with your own eyes that pads run when called for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air goes through %1 at %2, above the %3 that pads of %4 are made for: it would need %5 more pad face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 The air behind is %2 warmer for it %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear what blocks part of the face; where none is blocked, more pad. Never stop fans for it in hot weather.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air speed of %1, %2, comes from %3 of the face (%4 would do); along one pad it goes from %5 to %6, so evaporation and expected cooling are as unsure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take %1 points or more, evenly spread over the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air goes through %1 at %2 in one place and %3 in another, a spread of %4: the fast part dries first and cools least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for what blocks the slow part, outside and inside; judge drying at the fast part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something stands in the air&apos;s way before or behind the pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for stacked goods, weeds, curtains and doors that are half open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fans that pull from one side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with the same fans on both sides of the house.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air loses %1 in the pad of %2; a clean one takes %3 to %4 at %5. Fans move less air against it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean the pad; where crust stays in its passages, replace it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than the pad lies between the manometer&apos;s two ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold one end just outside and the other just behind the pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air loses only %1 in the pad of %2, where a wet one takes %3 to %4 at %5: part of it goes another way and is not cooled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close gaps; then measure drop and speed again with the pad wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pad was dry when the drop was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it again while the far end drips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thin air: the published values are for low farms.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with an earlier visit to this house.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The house stands at %1 below outside, above the %2 to %3 that is usual with pads: the fans move less air than they are counted for, and pads and birds get less of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the air&apos;s way, likeliest first, then read pressure and air speed again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tunnel doors or curtains behind the pads that are not fully open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the pressure just behind the pads too: what is lost after them is not theirs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too little pad for these fans.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare the air speed at the pad face with what such pads are made for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump runs for as long as pads are called for and never rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run of %1 fills the whole period of %2, so the pump never rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trimming can lengthen a run to %1 in a period of %2, and from then on the pump never rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cycle of %1 in %2 cools the same with %3 less pumping in every hour, %4 of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cycle of %1 in %2 cools the same with %3 less pumping in every hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; on the design day, with pads called for during %2, up to %3 less pumping and %4 less water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; on the design day, with pads called for during %2, up to %3 less pumping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that is what is wanted here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cycle was wanted here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no cycle would cool better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no cycle keeps these pads wet, and running without rest is what is advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whether a cycle cools the same is not known, because readings are missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the readings that the advice names as missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a timer that holds an on-time and a period.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring every on-time below the period; how far, the readings named as missing will tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the base on-time to %1, the on-time ceiling to %2 and the period to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the on-time to %1 and the period to %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the water that goes to %1, %2 evaporates by the stopwatch but %3 by flow and air. They are more than 30 % apart, so one of the two is wrong; the larger is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the flow again by drawing down the sump with the make-up shut, and time again from a dry pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet-through of %1 was read with the fans running at one time and off, or not stated, at another: these don&apos;t time the same thing. They count as read with the fans off, which asks for more water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time it again with the fans in one state throughout, or set aside the readings of the other state.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rinse of %1 ends %2 before the far end of %3, which takes %4 from dry with the fans on, would drip: what it should wash out stays there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse for at least %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rinse at %1 lies outside the pad hours, %2 before they begin at %3: it is left out, or the pads are dry again when they are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse when pad hours begin, at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1, when the rinse runs, it is %2 outside even on the design day, %3 below the start temperature: the house is chilled, and the pads dry off before they are called for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse at the first call for pads, or at the hour from which the design day is warm enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every day at %1 pads are wetted for %2, whatever the temperature, with birds of %3 days: wet, moving air chills birds younger than %4 days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switch the rinse off until the birds are %1 days old.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the design hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the weather of the readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set at least %1, or repeat the reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water needs %1 to reach the far end of %2, but a run lasts %3: in every period about %4 of this pad gets no water at all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 On the design day that far end is dry for all the %2 in which pads are called for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the on-time to %1 in the advised period of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the pump run without rest while pads are called for: no cycle fits here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the on-time above %1; what the pad drinks comes on top of that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest timed run of %1 is shorter than the %2 that %3 needs from dry, so only the rinse of %4 wets its far end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest timed run of %1 is shorter than the %2 that %3 needs from dry: only the rinse of %4 and the run after it wet its far end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run of %1 is shorter than the %2 that %3 needs from dry: after a dry start its far end drips only in run %4, %5 later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest timed run of %1 is %2 shorter than the %3 that %4 needs from dry: no single run wets its far end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the rinse of %1: the pads have to be wet through before birds depend on them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the runs begin early enough for the pads to be wet through before birds depend on them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set a morning rinse of at least %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the pump by hand for %1 before the timed runs begin, and set the advised on-time and period.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and the advised on-time and period.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and the on-time ceiling to %2, as advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and raise the ceiling to %2 too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: in this period a ceiling that long would leave the pump no rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, or repeat the reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the longest timed run of %1 wets the far end of %2 from dry is too close to call: that takes %3 ± %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether a run of %1 brings water to the far end of %2 is too close to call: that takes %3 ± %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim row %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it stands there, pads never run, however hot it gets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It tells nothing about the pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it stands there, the timer does not do what was meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 is outside what is usual, %3 to %4: kept as found, and nothing else is judged by it. %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it again at the controller; if it stands there, set it to %1, as advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it again at the controller, its unit too; if it stands there, correct it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2) of %3 cannot stand in this controller as it is described: it holds %4 to %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it again at the controller; if it stands there, correct the setting template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The base on-time is 0 s and nothing lengthens it: the pump never runs, and the pads stay dry however hot it gets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The base on-time is 0 s: no run begins before trimming makes one, %1 after pads are called for at the soonest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The base on-time is 0 s: no run begins before trimming makes one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set an on-time above the fill time; how far, the readings named as missing tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time ceiling of %1 is below the base of %2: where the timer holds the ceiling, pads get %3 less water in every run, %4 in an hour; where it holds the base, nothing is ever trimmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time ceiling of %1 is below the base of %2: where the timer holds the ceiling, pads get %3 less water in every run; where it holds the base, nothing is ever trimmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the base on-time to %1 and the ceiling to %2, as advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the ceiling to the base, %1, or above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs of up to %1 in %2 leave the pump a rest of %3, shorter than %4: it is started %5 times an hour to save %6 of pumping, and wears by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave a rest of at least %1, or let the pump run without rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A period of %1 starts the pump %2 times an hour, %3 more than one of %4: that many times more the header is filled anew, %5 of pumping that wets no pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A period of %1 starts the pump %2 times an hour, %3 more than one of %4: that many times more the header is filled anew, which wets no pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengthen the period to between %1 and %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a period of %1 the pads of %2 are without water for %3; nobody has timed whether they stay wet that long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the dry-out, or a wet start where pads can&apos;t be dried; until then a period of at most %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This timer holds steps of %1, so that %2 of %3 is not what runs: one of the two was misread, or the timer rounds, by up to %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read both again at the timer; to set it, %1 is the next longer it can hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump is meant to run without rest, but a run of %1 in %2 lets it rest %3 in every hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the on-time to %1, so that a run lasts the whole period, or take back that it is meant so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>evaporation alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>evaporation and bleed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At every stop of %1 at least %2 run back, but above the working level the sump takes only %3: %4 run over each time, and are made up again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the float lower; if the pump then draws air at a start, the sump is too small.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A start of %1 from dry pads takes %2 out of a sump of %3; only the make-up brings the missing %4 in time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See that the make-up is open and at full flow before a dry start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A start of %1 from dry pads takes %2 out of a sump of %3: with %4 still missing it draws air, and the far end stays dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the float as far as what runs back allows, start in two steps, or use a larger sump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The make-up of %1 brings %2; the design hour asks for %4 (%3), so %5 is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and the sump empties while the birds need it most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the make-up valve fully and clean its screen; then a larger valve or a second line, by whoever may work on the water supply.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: a full sump lasts %2 from there, then the pump draws air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Should the make-up of %1 fail at the design hour, its sump of %2 lasts %3 against %4 of %5; then the pads dry and the house heats up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a low-level alarm into the sump that reaches somebody within that time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below the lowest house temperature of %1 the pads are off, so that they never start at %2 as set: birds wait another %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start and lowest house temperature are both %1: pads go off as soon as they cool, and on and off again with every tenth of a degree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the lowest house temperature below the start temperature of %1, by as much as the grower wants the pads to hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may start at %1, %2 below the target of %3: they wet and cool a house that the controller is still warming.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the start temperature above the target, high enough for all tunnel fans to be on first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may start at %1 with birds of %2 days: air then comes in at %3, wet and fast, and chills them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads may start at %1 with birds of %2 days: air comes in wet and fast, and chills them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the pads off but against heat, and agree with the grower from which house temperature on, above %1, that is; from %2 days on the published start holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When trimming has brought the run down to %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Take out the trim rows that shorten the run: the base is the shortest that serves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the on-time to %1 and the period to %2, as advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One row is enough: %1 at %2 above target, as advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim row %1 at %2 above target does not stand above row %3 at %4: one of them is never reached, and which is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the rows in order, each at more degrees above target than the one before, or take one out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 above target on, a review gives the on-time %2 less than at %3: the hotter the house, the less its pads get.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let no row change the on-time by less than a cooler one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is shorter than the %1 that water needs to the far end, which then stays dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is left of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trim row takes %1 off the on-time, at every review again: after %2 of them, in %3, %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trim row takes %1 off the on-time, at every review again: after %2 of them %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out the trim rows that take time off, and let the base be the shortest run; they may stay only where the timer is known never to go below its base.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trim row of %1 takes the on-time from base to ceiling, %2, at one review: %3 more pumping in every hour, or none, and nothing between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trim row of %1 takes the on-time from base to ceiling, %2, at one review: nothing between is ever used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take steps of about %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trim row adds %1 from %2 above target on, within the %3 that a house wavers about its target: the on-time climbs although the house is as it should be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin to trim at %1 above target or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time is reviewed every %1, before the house has answered the last change (%2): it climbs to its ceiling within %3, needed or not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time is reviewed every %1, before the house has answered the last change (%2): it is changed too often and too far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Review it every %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time is reviewed every %1, which is no whole number of periods of %2: reviews fall into runs, and how many runs see one change differs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raise the on-time to %1 in this period.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a wet pad begins to dry there after %1, and the air comes in up to %2 warmer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a wet pad begins to dry there after %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it dries out there, and the air comes in up to %1 warmer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it dries out there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run of %1 reaches the far end of %2 but brings too little: at the design hour %3 of supply lack in every period of %4, so that %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run of %1 reaches the far end of %2, but at the design hour up to %3 of supply lack in every period of %4, by how the pad dries towards the end: it stays wet for sure from %5 on only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run of %1 brings back what evaporates from %2 in %3 at the design hour, which takes %4, but margin and uncertainty ask for %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the design hour the far end of %1 gets only %2 of what it could evaporate: even with the pump running without rest it stays dry in part, and the air comes in up to %3 warmer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the design hour the far end of %1 gets only %2 of what it could evaporate: even with the pump running without rest it stays dry in part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring more water: clean filter and outlets, then a larger pump, a second feed, or fewer metres of pad on this one. No setting helps; meanwhile run without rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By one farm&apos;s figure (Griggs, MS thesis, Auburn University) that would be up to %1 of scale in an hour like the design hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump holds %1 times the salts of the make-up, and its Langelier index of +%2 says that it lays down scale: pads clog and wear out early.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bleed is open too wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch the bleed in a vessel for a minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump runs over: a float set too high, or one that sticks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch the overflow through a stop of the pump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A leak, or water that is blown off the pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for wet ground along pipe, gutter and pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump holds hardly more salts than the make-up (%1 times): it was just filled, or it loses more water than it evaporates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test it again after a day of running; if it stands, find where it goes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump holds only %1 times the salts of the make-up, where at least %2 times is published: of the water let out, %3 are wasted in an hour like the design hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed no more than %1 at the design hour, leaks and drift counted in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump holds only %1 times the salts of the make-up, where at least %2 times is published: %3 of the water let out is wasted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed less, and find where else water goes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed %1 at the design hour, leaks and drift counted in: that holds it at %2 times, where the index is 0 at this pH.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed more, down to %1 times, where the index is 0 at this pH.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleeding alone does not hold this water: keep the pads wet while they are in use, rinse them, and ask a water treatment firm before anything is added. Never mix acid with bleach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump&apos;s pH is %1, below the published %2 to %3: it eats metal, and softens the pads&apos; paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sump&apos;s pH is %1, above the published %2 to %3: the water lays down scale more readily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop dosing acid, drain and refill, and test again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleed more, and test again; acid only by someone trained for it, and never with bleach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the weather of the reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the on-time to at least %1 in this period, or shorten the period.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorten the period.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The far end of %1 is without water for %2 in every period; nobody has seen it stay wet longer than %3 %4, so that it stays wet is not proven.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The far end of %1 is without water for %2 in every period but stays wet for %3 %4: it is dry for %5 before water comes back, dries %6 times an hour, cools less and scales.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Up to %2 dry on the design day, of %3 in which pads are called for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the far end of %1 dries in the %2 without water is too close to call: it stays wet for %3 ± %4 %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The far end of %1 is without water for %2 of the %3 that it stays wet %4: a weak outlet or a hotter day leaves a part dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do: readings from a dry pad are there and are used (%1 of them).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do for a cycle: the wet start serves; read wet-through when the pad can be dried.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry the pad with the fans running and time it again; where birds and weather forbid that, time a wet start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pad of %1 was not dry when wet-through was read (%2): such a reading is too short, it is kept and not used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one that is not here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 as left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 %3: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: ticked again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not ticked any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading that was set aside counts again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading is set aside again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 put back in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 back to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, changed places: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; other places: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One period of %1 to scale, at its slowest bank, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One period of %1 to scale; no bank was timed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: on-time from a full header, and no fill time is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: period or on-time not entered, or outside what is usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Commissioning sheet: cooling pads, pumps and timers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Service firm: %1. Farm: %2. House: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whole house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings on what was found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings found: not entered, so none of them was checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None by the rules of this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings that remain on what was left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings left: not entered, so none of them was checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked before the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked before leaving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the service firm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the grower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, from the %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill %1, wet-through %2, dry-out %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ± %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step of on-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step of period</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, mean of %2 points from %3 to %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Behind the pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air speed at the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water for each length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Evenness of the header, low quarter (worked out)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date of issue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draft, not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This sheet is a correction and replaces sheet %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>House, pumps and banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed: longest time the pads may be off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agreed: house temperature at which the test stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ± %2, runs: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least %1, within %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2, within %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ± %2, at most %3 later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen ± U (95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tolerances, all assumed: period and on-time %1, %2 of what is set or half a step, whichever is most; water at the far end %3 or %4 later than read; drip back %5 or %6 later than the model expects in the weather of the readings, and before the stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not seen: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely cause %1: %2 Next check: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done: the house has no timer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used, but stands out from the others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: set aside, &quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not limited</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet-through less fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same within uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was timed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timed by hand on this program&apos;s stopwatch. Mean of the readings used, ± expanded uncertainty U = k u for 95 % (JCGM 100:2008): spread, hand %1 (Am. J. Phys. 87(2):110, 2019), seeing a drip or a dry patch %2 (assumed), a start by signal %3 (assumed).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump switched by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times of each bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>U (95 %)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees of freedom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: wet-through was read with the fans now on, now off or not stated; it counts as off, which asks for more water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bank against bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against the shortest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longer by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No two banks were timed in the same way: nothing to compare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 above target: not entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 above target: %2 shorter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 above target: %2 longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim row %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (cannot be held as advised)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (cannot be held)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this timer has none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels, units and steps are those of %1. Its on-times count from a full header, the pump&apos;s runs from its start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels, units and steps are those of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; worked out %2, rounded up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; worked out %2, rounded down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As found, advised and as left: %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it differs from the advice: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to run pads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best cycle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was assumed for the advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missing for the advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet-through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run-off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet start: pump off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet start: drip returns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: unverified, across a restart or a start that nobody saw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: marks in the wrong order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: longer than a day, a mark is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: sooner than water can do it, or a second press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: pressed again, the first press counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: already there when seen, an upper bound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: the pad was not dry at the start, so it is too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: the fans were off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not used: whether the fans ran was not stated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>technician here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>technician, walked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helper on signal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timer at a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>these readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>like readings of this visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trimmed by temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed interval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on demand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity sensor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind the pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a full header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill: from pump start to water at the far end of the header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet-through: from pump start, pad dry, to an even drip under the pad farthest from the pump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run-off: from pump stop to the end of dripping.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry-out: from pump stop to the first dry patch on the pad face, fans running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet start, pump off: from a stop while the far end drips to the next start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet start, drip returns: from that start to an even drip at the far end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: too few visits for a trend, %2 of %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: no trend is seen in %2 visits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 rises by %2 a year, at 95 % by %3 to %4; %5 visits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 rises, by about %2 a year; %3 visits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 falls by %2 a year, at 95 % by %3 to %4; %5 visits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 falls, by about %2 a year; %3 visits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has been higher than in the first %1 visits for the last %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has been lower than in the first %1 visits for the last %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less water comes into the header: look at the pump, its strainer, the sump&apos;s level and the valves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water takes longer through the pad: look for clogged outlets in the header and for scale or blind flutes in the pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pad cools less than it did: look for scale, dust, sagging pads and gaps beside them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wetting time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet-through time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flow into the header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad effectiveness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drift and leaks, %1, already hold the salts of the sump at %2 times those of the make-up: no bleed is needed for %3 times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance lets the salts rise to at least %1 times those of the make-up (EnergyPlus Engineering Reference); %2 times bleeds more water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fill took only %1: take a larger vessel, so that each fill takes %2 to %3. The flow is uncertain by %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flow is uncertain by %1: catch at more outlets, or shut the make-up and time how fast the sump falls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flow is uncertain by %1, because the level fell by %2 only: let it fall further, as long as the pump stays under water and nothing comes back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flow is uncertain by %1: measure the sump&apos;s area better, or let the level fall for longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vessel that fills in %1 is uncertain by %2: shut the make-up and time how fast the sump falls instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The flow is uncertain by %1: read the meter over a longer time, or shut the make-up and time how fast the sump falls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Langelier index 0.0: the water is just saturated with calcium carbonate; it neither lays down scale nor dissolves it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Langelier index %1: the water holds more calcium carbonate than it can keep dissolved; it can lay down scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Langelier index %1: the water could dissolve more calcium carbonate; it lays down no such scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ryznar index %1: the lower it is, the more scale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cycle known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump never rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on, every %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pad stays wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from a dry pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>header fills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump runs, header full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pad takes up water; pump end first, far end last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet through, drips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump off, still drips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pad rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first dry patch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on-time found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remedy: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely, in this order: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, signature, date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DRAFT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DRAFT, not signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Switched by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the template.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what if</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::AdviceViewModel</name>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bank decides: the others need less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, rounded up to a step of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, rounded down to a step of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::ConditionsViewModel</name>
    <message>
        <source>outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1
%2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water in the air, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the picture, the outside temperature is needed, and the outside humidity, wet bulb or dew point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pad can cool this air to its wet bulb at most: %1, that is by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>behind the pad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Behind the pad it is colder than the wet bulb outside, which no pad does: check the thermometers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the house</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One point, %1: at least %2 make a mean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean of %1 points %2, from %3 to %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Too few to be firm: at least %2 points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pad cools %1 of the way to the wet bulb; a clean new one at this speed: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pad cools %1 of the way to the wet bulb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caught at %1 outlets: the least gives %2 of their mean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Catch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2; this one is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::CopiesViewModel</name>
    <message>
        <source>houses: %1, entries: %2, latest entry %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy is here yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last copy: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy of today could not be made, the records themselves go on. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on this tablet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copying to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied and read back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No copy was made. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This copy cannot be used. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the records hold now cannot be read. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This copy is not an earlier state of these records. They hold now %1. What is not in the copy goes out of sight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was entered since this copy was made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries made since this copy: %1. They go out of sight: the records hold now %2.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::EntryUndoViewModel</name>
    <message>
        <source>Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not made again: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made again: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::FormModel</name>
    <message>
        <source>usual: %1; anything else is kept as found, and marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside what is usual: kept as found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such line.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::HistoryViewModel</name>
    <message>
        <source>%1 ± %2 on %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first %1, last %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::HouseViewModel</name>
    <message>
        <source>pad length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>header bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet bore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outlet spacing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the flow by outlet, this is missing: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 into this header, its share of the pump&apos;s flow %2; %3 at its inlet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head at the inlet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low-quarter uniformity %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first outlet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last outlet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of %1 outlets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest outlet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no velocity head regained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of it regained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the flow by outlet, a flow is missing: measure it (Conditions), or enter the head at the header&apos;s inlet or the pump&apos;s curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The real header lies between the bars and the dashed line. Christiansen&apos;s coefficient %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assumed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pump</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Timers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curve point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one that is not here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template was changed after it was chosen here. This timer keeps to it as it was.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::HousesModel</name>
    <message>
        <source>visits: %1, latest %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not visited yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking at the latest visit …</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::LimitsViewModel</name>
    <message>
        <source>the program&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These cannot be used together, so the program&apos;s own are: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed for this farm. The program&apos;s own is %1 (%2).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program&apos;s own (%1).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::ProofViewModel</name>
    <message>
        <source>1st</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2nd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3rd or later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records are only looked at: nothing can be watched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This visit is signed. Start a new visit to watch again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe a pump and its banks first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No timer switches the pump of %1: say which does in House and banks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the pump back on automatic: in a proof run its timer switches it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pump never rests: nothing is timed. Look at the far end and at the whole face, then answer below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand at the far end of %1. Wait for the pump to start, then mark it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tablet restarted: this cycle does not count. Go on with the next start of the pump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait for the next start, then mark it: it completes the period.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark when water comes out at the far end of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch under %1: mark when the far end drips evenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait for the pump to stop, then mark it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Look: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::Q</name>
    <message>
        <source>Cannot be held as advised. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::RemovedViewModel</name>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farm %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visit of %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting template %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>removed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes out of sight, and with it its visits: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its entries, presses and sheet go out of sight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is offered to no timer any more. Timers that carry it keep their copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes out of sight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Nothing is deleted: it can be brought back, at once or later from Removed at the houses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not removed: a pump of it is off for a test. Start it, or put it back on automatic, first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not removed: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not brought back: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not brought back: what it belongs to was removed too; bring that back first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is out of sight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SessionViewModel</name>
    <message>
        <source>Another farm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fed by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed, presses: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open, presses: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A house needs a name, and a farm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Presses are not stored yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are only on this screen and are lost if you leave now. Stay, make room, or write them elsewhere first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump is running on the stopwatch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time goes on and nothing is lost; Wetfront opens here again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cycle is being watched for the proof.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you see while you are away is not in it; the presses so far are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump is off for a test: the birds are without cooling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing counts down once Wetfront is closed. Start the pump, or put it back on automatic, first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The countdown goes on, on every page. Start the pump, or put it back on automatic, before you go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump is off for a test, and its countdown would end. Start the pump first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Presses were written elsewhere and can&apos;t go into their visit, which is signed since: %1, in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Presses were written elsewhere and are not in the record: %1, in %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SettingsViewModel</name>
    <message>
        <source>found %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ advised %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised: no value, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be held as advised: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 instead of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, row %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 becomes %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It no longer says that the pump is meant to run without rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It says that the pump is meant to run without rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim rows from the second on are taken out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reason for differing is taken out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no advice for this timer.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::SheetViewModel</name>
    <message>
        <source>Presses are not stored yet; make room first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, checked %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed by %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pump is off for a test and not back on automatic.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no fill time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not ticked: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no settings left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 And %2 more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write what is still open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder %1 cannot be made. Nothing is lost; choose another place for documents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose who signs.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::StartProblemViewModel</name>
    <message>
        <source>It holds %1. What was entered after that is not in it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::StepsModel</name>
    <message>
        <source>at most %1 off, stop at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pump was timed without an agreement on how long the pads may be off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing agreed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>House and banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No timer switches %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pumps: %1, banks: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 banks timed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet bulb %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dew point %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside temperature and humidity are needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>harm: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fault: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waste: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing wrong found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not all entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cycle is advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>continuous pumping is advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>continuous pumping until the readings are there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The settings left have a %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not entered yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proof run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before leaving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all back as it should be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines open: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody named yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draft</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::StopwatchViewModel</name>
    <message>
        <source>this bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wetting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry patch seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>running off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records are only looked at: nothing can be timed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This visit is signed. Start a new visit to time again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe a pump and its banks first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First agree with the grower how long the pads may be off, and at which temperature you stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tablet restarted: this time is not verified and not used. Let the pads dry, then start again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press now: it was already there when you came, so it counts as an upper bound only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the pump again before the pad dries, then go to the far end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads dry? Say who starts the pump, then press as it starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pads dry already? Press as the pump starts. Still wet? Choose Pump stops, then press as you stop it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press as the pump stops. What a bank has not shown by then is not timed in this run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press as the pump stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the far end drip, then press as the pump stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every bank drips: press as the pump stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand at the far end of %1: press when water comes out there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch under %1: press when it drips evenly and no dry streak is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch under %1: press when it stops dripping.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 dries: press at the first dry patch. Time another pump or enter settings meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the next full minute on this tablet&apos;s clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since the pump started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since the pump stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (already there)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stands out from the others; still used</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::TemplateViewModel</name>
    <message>
        <source>The on-time ceiling is at least the base on-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The on-time ceiling is below the period</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The base on-time is below the period</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The review interval is a multiple of the period</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pad hours end on the day on which they begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each trim row is at more degrees than the one before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every %1 %2, %3 to %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pump start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a full header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is told of the water, and shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A template needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The template has no such setting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not written: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::TemplatesViewModel</name>
    <message>
        <source>%1, settings: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is added. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This template was removed here and can be brought back from Removed at the houses. Adding it makes a second one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This template is here already, just as it is in the file. Adding it makes a second one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This template is here already, but it is not the same as in the file. Adding it makes a second one; yours stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::VisitViewModel</name>
    <message>
        <source>Presses not stored yet: %1. They are kept on screen and tried again: go on timing. Why: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written to %1. Wetfront finds it there at its next start.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wetfront::ui::WhatIfViewModel</name>
    <message>
        <source>found %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
