// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The stopwatch. Landscape: drawing left, time and readings right, the mark button over the lower third; portrait: drawing,
// time, button. Space, enter and the volume keys mark too.
MarkKeys {
    id: step

    required property SessionViewModel session
    required property VisitViewModel visit
    required property ConfirmPanel confirm
    readonly property StopwatchViewModel stopwatch: visit.stopwatch
    readonly property bool landscape: width > height
    readonly property string markDetail: stopwatch.alreadyThere ? qsTr("press now: it was already there") : qsTr("press as it happens")
    property bool othersShown: false

    onKeyMarked: stopwatch.mark()

    Connections {
        target: step.stopwatch
        function onMarked(): void {
            step.othersShown = false;
        }
        // A key marks again after a button was pressed: the button does not keep the keyboard.
        function onChanged(): void {
            if (step.activeFocus)
                step.takeKeyboard();
        }
    }
    LockedPanel {
        id: locked
        instruction: step.stopwatch.instruction
        markText: step.stopwatch.markText
        markDetail: step.markDetail
        elapsedText: step.stopwatch.elapsedText
        elapsedLabel: step.stopwatch.elapsedLabel
        undoText: step.stopwatch.undoText
        canMark: step.stopwatch.canMark
        pumpOffText: step.session.pumpOffText
        pumpOffUrgent: step.session.pumpOffUrgent
        problem: step.visit.storageProblem
        awakeProblem: step.session.awakeProblem
        onMarked: step.stopwatch.mark()
        onUndone: step.stopwatch.undo()
        onClosed: step.takeKeyboard()
    }

    ColumnLayout {
        visible: !locked.visible
        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: Theme.gap

        GridLayout {
            columns: step.landscape ? 2 : 1
            columnSpacing: Theme.space
            rowSpacing: Theme.gap
            Layout.fillWidth: true
            Layout.fillHeight: true

            StopwatchPanel {
                visit: step.visit
                stopwatch: step.stopwatch
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: step.width * 0.6
                Layout.preferredHeight: step.height * 0.4
            }
            ColumnLayout {
                spacing: Theme.gap
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.preferredWidth: step.width * 0.4
                Layout.preferredHeight: step.height * 0.3
                RunningTime {
                    text: step.stopwatch.elapsedText
                    label: step.stopwatch.elapsedLabel
                    awakeProblem: step.session.awakeProblem
                    Layout.fillWidth: true
                }
                ReadingsCard {
                    stopwatch: step.stopwatch
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                }
            }
        }
        // Every button keeps its place, so that none comes under a finger that meant another. None of them marks: they say
        // what the next press marks.
        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true
            ActionButton {
                enabled: step.stopwatch.undoText.length > 0
                text: qsTr("Undo")
                pictogram: "undo"
                Accessible.name: enabled ? step.stopwatch.undoText : text
                onClicked: step.stopwatch.undo()
            }
            ActionButton {
                enabled: step.stopwatch.redoText.length > 0
                text: qsTr("Redo")
                pictogram: "redo"
                Accessible.name: enabled ? step.stopwatch.redoText : text
                onClicked: step.stopwatch.redo()
            }
            ActionButton {
                enabled: step.stopwatch.timing
                text: qsTr("Lock")
                Accessible.name: qsTr("Lock the glass: only the mark button and undo")
                onClicked: locked.open()
            }
            ActionButton {
                enabled: step.stopwatch.canHandBack
                text: qsTr("Back on automatic")
                Accessible.name: qsTr("Pump is back on automatic")
                onClicked: {
                    if (!step.stopwatch.timing) {
                        step.stopwatch.handBack();
                        return;
                    }
                    step.confirm.ask({
                        question: qsTr("Is the pump back on automatic?"),
                        detail: qsTr("This ends the reading that runs. Undo brings it back."),
                        keepText: qsTr("Go on timing"),
                        doText: qsTr("It is on automatic"),
                        act: () => step.stopwatch.handBack()
                    });
                }
            }
            ActionButton {
                enabled: step.stopwatch.canBeAlreadyThere && step.stopwatch.canMark
                text: step.stopwatch.alreadyThere ? qsTr("As it happens") : qsTr("Already there")
                Accessible.name: step.stopwatch.alreadyThere ? text : qsTr("It was already there")
                onClicked: step.stopwatch.alreadyThere = !step.stopwatch.alreadyThere
            }
            ActionButton {
                readonly property bool single: step.stopwatch.otherMarks.length === 1
                enabled: step.stopwatch.canMark && step.stopwatch.otherMarks.length > 0
                text: single ? step.stopwatch.otherMarks[0].text : step.othersShown ? qsTr("Fewer") : qsTr("Something else")
                Accessible.name: single || step.othersShown ? text : qsTr("Something else happened")
                onClicked: {
                    if (single)
                        step.stopwatch.chooseOther(0);
                    else
                        step.othersShown = !step.othersShown;
                }
            }
            ActionButton {
                visible: step.stopwatch.blockedStep >= 0
                text: qsTr("Go there")
                kind: "primary"
                onClicked: step.visit.step = step.stopwatch.blockedStep
            }
            Repeater {
                model: step.stopwatch.canMark && step.othersShown && step.stopwatch.otherMarks.length > 1 ? step.stopwatch.otherMarks : []
                delegate: ActionButton {
                    required property var modelData
                    text: modelData.text
                    onClicked: {
                        step.othersShown = false;
                        step.stopwatch.chooseOther(modelData.index);
                    }
                }
            }
        }
        MarkButton {
            text: step.stopwatch.markText
            detail: step.stopwatch.canMark ? step.markDetail : step.stopwatch.blockedWhy
            enabled: step.stopwatch.canMark
            onPressed: step.stopwatch.mark()
            Layout.fillWidth: true
            Layout.preferredHeight: Math.max(Theme.markHeight, step.height / 3)
        }
    }
}
