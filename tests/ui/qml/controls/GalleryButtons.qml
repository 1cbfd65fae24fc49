// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Theme
import Wetfront.Controls

ScrollColumn {
    id: page

    property string unitSystem: "us"
    property bool ticked: true

    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        ActionButton {
            text: "Next: Conditions"
            kind: "primary"
            pictogram: "forward"
        }
        ActionButton {
            text: "Undo"
            pictogram: "undo"
        }
        ActionButton {
            text: "Delete house"
            kind: "warning"
            pictogram: "bin"
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        ActionButton {
            text: "Print"
            kind: "primary"
            pictogram: "printer"
            enabled: false
        }
        ActionButton {
            text: "Redo"
            pictogram: "redo"
            enabled: false
        }
        PlainWords {
            text: "1:23.4"
            kind: "running"
            wrapMode: Text.NoWrap
        }
    }
    MarkButton {
        text: "Water at the far end"
        detail: "Bank 1 · pump started here"
        Layout.fillWidth: true
    }
    RowLayout {
        spacing: Theme.gap
        MarkButton {
            text: "First drip"
            detail: "Bank 2"
            kind: "quiet"
            Layout.fillWidth: true
        }
        MarkButton {
            text: "Dripping ends"
            enabled: false
            Layout.fillWidth: true
        }
    }
    ChoiceRow {
        label: "Units"
        model: [
            {
                value: "us",
                text: "US customary"
            },
            {
                value: "si",
                text: "Metric"
            }
        ]
        current: page.unitSystem
        onChosen: value => page.unitSystem = value
        Layout.fillWidth: true
    }
    ChoiceRow {
        label: "Who starts the pump?"
        model: [
            {
                value: 0,
                text: "I, here"
            },
            {
                value: 1,
                text: "A helper on my signal"
            },
            {
                value: 2,
                text: "The controller at a set minute"
            },
            {
                value: 3,
                text: "I, and I walk to the far end"
            }
        ]
        current: 1
        Layout.fillWidth: true
    }
    TickLine {
        text: "Breaker on"
        detail: "Pump and fans back on automatic"
        ticked: page.ticked
        onToggled: wanted => page.ticked = wanted
        Layout.fillWidth: true
    }
    TickLine {
        text: "Flush valve shut"
        Layout.fillWidth: true
    }
    TickLine {
        text: "Alarm armed"
        ticked: true
        enabled: false
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Repeater {
            model: ["tick", "cross", "problem", "back", "forward", "up", "down", "plus", "minus", "undo", "redo", "drop", "pump", "fan", "pad", "house", "farm", "clock", "sheet", "printer", "backspace", "pencil", "info", "wrench", "sun", "moon", "shade", "list", "bin"]
            delegate: Pictogram {
                required property string modelData
                name: modelData
                size: 1.5 * Theme.pictogram
            }
        }
    }
    Hatching {
        implicitHeight: Theme.target
        colour: Theme.water
        Layout.fillWidth: true
    }
}
