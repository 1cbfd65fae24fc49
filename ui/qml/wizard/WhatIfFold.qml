// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.History
import Wetfront.Theme
import Wetfront.ViewModels

// What if: period and on-times under the finger, the cycle and what is found against it beside them. Stores nothing.
Fold {
    id: fold

    required property WhatIfViewModel whatIf
    required property DayViewModel day

    title: qsTr("What if")
    summary: qsTr("move period and on-time, see the cycle")

    component Scale: SliderRow {
        required property WhatIfSetting setting
        visible: setting.there
        label: setting.label
        text: setting.text
        from: setting.from
        to: setting.to
        stepSize: setting.step
        value: setting.value
        ticks: setting.ticks
        onMoved: value => setting.move(value)
        Layout.fillWidth: true
    }

    content: Component {
        ColumnLayout {
            id: opened
            // Its own: when a page goes, what is around it goes first.
            readonly property WhatIfViewModel whatIf: fold.whatIf
            readonly property DayViewModel day: fold.day
            spacing: Theme.gap
            Layout.fillWidth: true
            Component.onCompleted: {
                whatIf.open = true;
                day.show();
            }
            Component.onDestruction: {
                whatIf.open = false;
                day.hide();
            }

            CycleStripItem {
                strips: opened.whatIf.strips
                font.family: Theme.family
                font.pixelSize: Theme.fontSmall
                lineColor: Theme.ink
                faintColor: Theme.line
                groundColor: Theme.surface
                waterColor: Theme.water
                warmColor: Theme.warning
                stroke: Theme.border
                implicitHeight: Theme.mm(14) * (opened.whatIf.strips.length + 1)
                Layout.fillWidth: true
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("one period of the pump's cycle: found, what if")
                Accessible.description: Sentence.fill(qsTr("%1 in every %2"), [opened.whatIf.onTime.text, opened.whatIf.period.text])
            }
            PlainWords {
                visible: text.length > 0
                text: opened.day.sentence
                Layout.fillWidth: true
            }
            Scale {
                setting: opened.whatIf.period
            }
            Scale {
                setting: opened.whatIf.onTime
            }
            Scale {
                setting: opened.whatIf.ceiling
            }
            ActionButton {
                text: opened.whatIf.fromAdvice ? qsTr("Back to the advice") : qsTr("Back to what was found")
                enabled: opened.whatIf.moved
                onClicked: opened.whatIf.back()
            }
            DayPicture {
                day: opened.day
                Layout.fillWidth: true
            }
            // Cards stay while they are told something else: a new one for each would cost the finger its answer.
            Repeater {
                model: opened.whatIf.findings.length
                delegate: FindingCard {
                    required property int index
                    readonly property var finding: opened.whatIf.findings[index] ?? ({})
                    severity: finding.severity ?? "note"
                    message: finding.message ?? ""
                    remedy: finding.remedy ?? ""
                    source: finding.source ?? ""
                    causes: finding.causes ?? []
                    Layout.fillWidth: true
                }
            }
            PlainWords {
                visible: opened.whatIf.findings.length === 0
                text: qsTr("Nothing is found against these settings.")
                Layout.fillWidth: true
            }
        }
    }
}
