// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The bank with the water where it should be, or the questions before a pump is switched.
ColumnLayout {
    id: panel

    required property VisitViewModel visit
    required property StopwatchViewModel stopwatch
    readonly property bool asks: stopwatch.canMark && (stopwatch.asksStart || stopwatch.asksStop && !stopwatch.running)

    spacing: Theme.gap

    ChoiceRow {
        visible: panel.stopwatch.pumps.length > 1
        model: panel.stopwatch.pumps
        current: panel.stopwatch.pump
        onChosen: value => panel.stopwatch.pump = value
        label: qsTr("Pump")
        Layout.fillWidth: true
    }
    ChoiceRow {
        visible: panel.stopwatch.banks.length > 1 && !panel.asks
        model: panel.stopwatch.banks
        current: panel.stopwatch.bank
        onChosen: value => panel.stopwatch.bank = value
        label: qsTr("I stand at")
        Layout.fillWidth: true
    }
    StopwatchQuestions {
        visible: panel.asks
        visit: panel.visit
        stopwatch: panel.stopwatch
        Layout.fillWidth: true
        Layout.fillHeight: true
    }
    ChoiceRow {
        visible: !panel.asks && panel.stopwatch.asksStop && panel.stopwatch.running
        label: qsTr("When it stops, the fans are")
        model: [
            {
                value: "no",
                text: qsTr("Off")
            },
            {
                value: "yes",
                text: qsTr("Running")
            }
        ]
        current: panel.stopwatch.fans
        onChosen: value => panel.stopwatch.fans = value
        Layout.fillWidth: true
    }
    BankItem {
        visible: !panel.asks
        pumpOnLeft: panel.stopwatch.pumpOnLeft
        aspect: panel.stopwatch.aspect
        headerFront: Math.max(0, panel.stopwatch.headerFront)
        wetFront: panel.stopwatch.wetFront
        running: panel.stopwatch.running
        lineColor: Theme.ink
        faintColor: Theme.line
        groundColor: Theme.ground
        waterColor: Theme.water
        warmColor: Theme.warning
        stroke: Theme.borderStrong
        Layout.fillWidth: true
        Layout.fillHeight: true
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("the bank, with the water where it should be")
    }
    PlainWords {
        visible: !panel.asks && panel.stopwatch.running && panel.stopwatch.headerFront < 0
        text: qsTr("No earlier visit, and no flow and header bore to work it out from: only the time is shown.")
        kind: "small"
        soft: true
        Layout.fillWidth: true
    }
}
