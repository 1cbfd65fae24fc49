// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// A cycle that the timer makes by itself is watched: the mark button over the lower third, above it the bank and the time,
// and further down what is looked at and the verdict. Space, enter and the volume keys mark too.
MarkKeys {
    id: step

    required property SessionViewModel session
    required property VisitViewModel visit
    required property NumberPad pad
    readonly property ProofViewModel proof: visit.proof
    readonly property bool landscape: width > height
    readonly property var causes: proof.causes
    readonly property string markDetail: qsTr("press as it happens")
    property bool othersShown: false

    onKeyMarked: proof.mark()

    Connections {
        target: step.proof
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
        instruction: step.proof.instruction
        markText: step.proof.markText
        markDetail: step.markDetail
        elapsedText: step.proof.elapsedText
        elapsedLabel: step.proof.elapsedLabel
        undoText: step.proof.undoText
        canMark: step.proof.canMark
        pumpOffText: step.session.pumpOffText
        pumpOffUrgent: step.session.pumpOffUrgent
        problem: step.visit.storageProblem
        awakeProblem: step.session.awakeProblem
        onMarked: step.proof.mark()
        onUndone: step.proof.undo()
        onClosed: step.takeKeyboard()
    }

    ColumnLayout {
        visible: !locked.visible
        anchors.fill: parent
        anchors.margins: Theme.gap
        spacing: Theme.gap

        ScrollColumn {
            id: view
            margin: 0
            Layout.fillWidth: true
            Layout.fillHeight: true

            ChoiceRow {
                visible: step.proof.banks.length > 1
                label: step.proof.timerName.length > 0 ? qsTr("I stand at (timer: %1)").arg(step.proof.timerName) : qsTr("I stand at")
                model: step.proof.banks
                current: step.proof.bank
                onChosen: value => step.proof.bank = value
                Layout.fillWidth: true
            }
            GridLayout {
                columns: step.landscape ? 2 : 1
                columnSpacing: Theme.space
                rowSpacing: Theme.gap
                Layout.fillWidth: true
                BankItem {
                    pumpOnLeft: step.proof.pumpOnLeft
                    aspect: step.proof.aspect
                    headerFront: Math.max(0, step.proof.headerFront)
                    wetFront: step.proof.wetFront
                    running: step.proof.running
                    lineColor: Theme.ink
                    faintColor: Theme.line
                    groundColor: Theme.ground
                    waterColor: Theme.water
                    warmColor: Theme.warning
                    stroke: Theme.borderStrong
                    Layout.fillWidth: true
                    Layout.preferredWidth: view.width * 0.5
                    Layout.preferredHeight: Math.min(Theme.pictureHeight, view.height * 0.6)
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("the bank that is watched, with the water where it should be")
                }
                ColumnLayout {
                    spacing: Theme.gap
                    Layout.fillWidth: true
                    Layout.preferredWidth: view.width * 0.5
                    RunningTime {
                        text: step.proof.elapsedText
                        label: step.proof.elapsedLabel
                        awakeProblem: step.session.awakeProblem
                        Layout.fillWidth: true
                    }
                    RowLayout {
                        spacing: Theme.gap
                        Layout.fillWidth: true
                        VerdictMark {
                            verdict: step.proof.verdict
                            size: Theme.pictogram * 1.5
                            Layout.alignment: Qt.AlignTop
                        }
                        PlainWords {
                            // Why it failed, and what to look at, stands below with the causes.
                            text: step.proof.verdict === "fail" ? step.proof.verdictWord : step.proof.verdictText
                            color: step.proof.verdict === "fail" ? Theme.warningInk : Theme.ink
                            font.bold: step.proof.verdict !== "open"
                            Layout.fillWidth: true
                        }
                    }
                }
            }
            FormCard {
                title: qsTr("What you see")
                form: step.proof.questions
                pad: step.pad
                readOnly: step.visit.frozen
                Layout.fillWidth: true
            }
            FindingCard {
                visible: step.proof.verdict === "fail"
                severity: "fault"
                message: step.proof.verdictText
                causes: step.causes
                expanded: true
                Layout.fillWidth: true
            }
            ProofLines {
                visible: step.proof.lines.length > 0
                lines: step.proof.lines
                rule: step.proof.decisionRule
                Layout.fillWidth: true
            }
            Card {
                visible: step.proof.lastMarks.length > 0
                title: qsTr("Marks, newest first")
                spacing: Theme.spaceSmall
                Layout.fillWidth: true
                Repeater {
                    model: step.proof.lastMarks
                    delegate: MarkLine {}
                }
            }
            CautionList {
                visit: step.visit
                Layout.fillWidth: true
            }
        }
        // Every button keeps its place, so that none comes under a finger that meant another. None of them marks: they say
        // what the next press marks.
        Flow {
            visible: !step.visit.frozen
            spacing: Theme.gap
            Layout.fillWidth: true
            ActionButton {
                enabled: step.proof.undoText.length > 0
                text: qsTr("Undo")
                pictogram: "undo"
                Accessible.name: enabled ? step.proof.undoText : text
                onClicked: step.proof.undo()
            }
            ActionButton {
                enabled: step.proof.redoText.length > 0
                text: qsTr("Redo")
                pictogram: "redo"
                Accessible.name: enabled ? step.proof.redoText : text
                onClicked: step.proof.redo()
            }
            ActionButton {
                enabled: step.proof.watching
                text: qsTr("Lock")
                Accessible.name: qsTr("Lock the glass: only the mark button and undo")
                onClicked: locked.open()
            }
            ActionButton {
                enabled: step.proof.canMark && step.proof.otherMarks.length > 0
                text: step.othersShown ? qsTr("Fewer") : qsTr("Something else")
                Accessible.name: step.othersShown ? text : qsTr("Something else happened")
                onClicked: step.othersShown = !step.othersShown
            }
            Repeater {
                model: step.proof.canMark && step.othersShown ? step.proof.otherMarks : []
                delegate: ActionButton {
                    required property var modelData
                    text: modelData.text
                    onClicked: {
                        step.othersShown = false;
                        step.proof.chooseOther(modelData.index);
                    }
                }
            }
        }
        MarkButton {
            visible: !step.visit.frozen
            text: step.proof.markText
            detail: step.proof.canMark ? step.markDetail : step.proof.blockedWhy
            enabled: step.proof.canMark
            onPressed: step.proof.mark()
            Layout.fillWidth: true
            Layout.preferredHeight: Math.max(Theme.markHeight, step.height / 3)
        }
    }
}
