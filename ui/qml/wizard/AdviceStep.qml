// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.History
import Wetfront.Theme
import Wetfront.ViewModels

// What is wrong with what was found, what is advised, and why.
ScrollColumn {
    id: step

    required property VisitViewModel visit
    required property ReasonSheet reasons
    required property NumberPad pad
    readonly property AdviceViewModel advice: visit.advice

    ChoiceRow {
        visible: step.advice.timers.length > 1
        label: qsTr("Timer")
        model: step.advice.timers
        current: step.advice.timer
        onChosen: value => step.advice.timer = value
        Layout.fillWidth: true
    }
    Repeater {
        model: step.advice.foundFindings
        delegate: FindingCard {
            required property var modelData
            severity: modelData.severity
            message: modelData.message
            consequence: ""
            remedy: modelData.remedy
            source: modelData.source
            causes: modelData.causes
            Layout.fillWidth: true
        }
    }
    Card {
        title: qsTr("Advice")
        Layout.fillWidth: true
        PlainWords {
            text: step.advice.verdict
            font.bold: true
            Layout.fillWidth: true
        }
        Repeater {
            model: step.advice.missing
            delegate: PlainWords {
                required property string modelData
                text: modelData
                color: Theme.warningInk
                Layout.fillWidth: true
            }
        }
        Repeater {
            model: step.advice.banks
            delegate: PlainWords {
                required property var modelData
                text: Sentence.fill(qsTr("%1: %2"), [modelData.name, modelData.text])
                Layout.fillWidth: true
            }
        }
        Repeater {
            model: step.advice.notes
            delegate: PlainWords {
                required property string modelData
                text: modelData
                Layout.fillWidth: true
            }
        }
        CycleStripItem {
            visible: step.advice.strips.length > 0
            strips: step.advice.strips
            font.family: Theme.family
            font.pixelSize: Theme.fontSmall
            lineColor: Theme.ink
            faintColor: Theme.line
            groundColor: Theme.surface
            waterColor: Theme.water
            warmColor: Theme.warning
            stroke: Theme.border
            implicitHeight: Theme.mm(14) * (step.advice.strips.length + 1)
            Layout.fillWidth: true
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("one period of the pump's cycle: found, advised, left")
        }
        DayFold {
            day: step.visit.day
            Layout.fillWidth: true
        }
        WhatIfFold {
            visible: whatIf.possible
            whatIf: step.advice.whatIf
            day: step.visit.day
            Layout.fillWidth: true
        }
        PlainWords {
            text: step.advice.truth
            Layout.fillWidth: true
        }
        PlainWords {
            text: step.advice.truthSource
            kind: "small"
            soft: true
            Layout.fillWidth: true
        }
    }
    Card {
        visible: step.advice.controller.length > 0
        title: qsTr("To be entered, as %1 asks").arg(step.advice.controller)
        Layout.fillWidth: true
        Repeater {
            model: step.advice.toEnter
            delegate: ToEnterLine {
                Layout.fillWidth: true
            }
        }
    }
    Repeater {
        model: step.advice.groups
        delegate: AdviceGroup {
            required property var modelData
            title: modelData.title
            rows: modelData.rows
            onReasonAsked: setting => step.reasons.explain(step.advice.reason(setting))
            Layout.fillWidth: true
        }
    }
    Card {
        title: qsTr("Assumed or changed")
        Layout.fillWidth: true
        Repeater {
            model: step.advice.assumed
            delegate: PlainWords {
                required property string modelData
                text: modelData
                kind: "small"
                Layout.fillWidth: true
            }
        }
        LimitsFold {
            limits: step.visit.limits
            pad: step.pad
            readOnly: step.visit.frozen
            Layout.fillWidth: true
        }
    }
    CautionList {
        visit: step.visit
        Layout.fillWidth: true
    }
}
