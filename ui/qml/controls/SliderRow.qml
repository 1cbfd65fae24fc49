// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Wetfront.Theme

// A value that is moved along a scale, in steps. `value` belongs to the page: a finger or the arrow keys only ask, through
// moved(). Values to compare with stand as ticks: advised ones above the scale, others below.
GridLayout {
    id: row

    required property string label
    property string text            // the value with its unit
    property real from: 0
    property real to: 1
    property real stepSize: 1
    property real value: 0
    property var ticks: []          // {at, text, advised}

    signal moved(real value)

    readonly property bool wide: width >= Theme.fieldWidth * 1.7
    readonly property real inset: Theme.target / 2

    function place(at: real): real {
        return inset + (slider.width - 2 * inset) * (at - from) / (to - from);
    }

    columns: wide ? 2 : 1
    columnSpacing: Theme.space
    rowSpacing: Theme.spaceSmall

    component Tick: Item {
        id: tick
        required property var modelData
        readonly property real at: row.place(modelData.at)
        anchors.fill: parent
        Rectangle {
            x: tick.at - width / 2
            y: tick.modelData.advised ? words.implicitHeight : slider.y + slider.height / 2
            width: tick.modelData.advised ? Theme.borderStrong : Theme.border
            height: tick.height / 2 - words.implicitHeight
            color: tick.modelData.advised ? Theme.water : Theme.ink
        }
        PlainWords {
            id: words
            x: Math.max(0, Math.min(tick.at - implicitWidth / 2, tick.width - implicitWidth))
            y: tick.modelData.advised ? 0 : tick.height - implicitHeight
            text: tick.modelData.text
            kind: "small"
            color: tick.modelData.advised ? Theme.water : Theme.inkSoft
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
    }

    ColumnLayout {
        spacing: 0
        Layout.fillWidth: !row.wide
        Layout.preferredWidth: row.wide ? Theme.fieldWidth * 0.7 : -1
        PlainWords {
            text: row.label
            Accessible.ignored: true
            Layout.fillWidth: true
        }
        PlainWords {
            text: row.text
            kind: "number"
            font.bold: true
            Accessible.ignored: true
            Layout.fillWidth: true
        }
    }
    Item {
        implicitHeight: slider.implicitHeight + 2 * measure.implicitHeight
        Layout.fillWidth: true
        // The height of a line of small print.
        PlainWords {
            id: measure
            visible: false
            text: "0"
            kind: "small"
        }
        Repeater {
            model: row.ticks
            delegate: Tick {}
        }
        T.Slider {
            id: slider
            y: measure.implicitHeight
            width: parent.width
            implicitHeight: Theme.target
            from: row.from
            to: row.to
            stepSize: row.stepSize
            value: row.value
            snapMode: T.Slider.SnapAlways
            focusPolicy: Qt.StrongFocus
            Accessible.name: row.label
            Accessible.description: [row.text, ...row.ticks.map(tick => tick.text)].join("; ")
            onMoved: row.moved(value)
            background: Item {
                Rectangle {
                    x: row.inset
                    y: (parent.height - height) / 2
                    width: parent.width - 2 * row.inset
                    height: Theme.mm(1.5)
                    radius: height / 2
                    color: Theme.surface
                    border.width: Theme.border
                    border.color: Theme.line
                    Rectangle {
                        width: parent.width * slider.visualPosition
                        height: parent.height
                        radius: parent.radius
                        color: Theme.water
                    }
                }
            }
            handle: Rectangle {
                x: slider.visualPosition * (slider.width - width)
                width: Theme.target
                height: Theme.target
                radius: Theme.radius
                color: slider.pressed ? Theme.ink : Theme.water
                border.width: Theme.borderStrong
                border.color: Theme.surface
                Rectangle {
                    anchors.centerIn: parent
                    width: Theme.borderStrong
                    height: parent.height / 2
                    color: Theme.waterPaper
                }
                FocusRing {
                    visible: slider.visualFocus
                }
            }
        }
    }
}
