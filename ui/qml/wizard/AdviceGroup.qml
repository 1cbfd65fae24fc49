// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// One of the four questions: each setting as found, advised and left. Touching an advised number opens its reason.
Card {
    id: group

    required property var rows
    readonly property real column: Math.max(Theme.mm(22), (width - Theme.mm(50)) / 4)

    signal reasonAsked(string setting)

    // Of three columns from the right edge: the same places in the heading and in every row.
    component Cell: PlainWords {
        property int place: 0
        x: parent ? parent.width - (3 - place) * (group.column + Theme.gap) + Theme.gap : 0
        width: group.column
        horizontalAlignment: Text.AlignRight
    }

    Item {
        implicitHeight: childrenRect.height
        Layout.fillWidth: true
        Cell {
            place: 0
            text: qsTr("found")
            kind: "small"
            soft: true
        }
        Cell {
            place: 1
            text: qsTr("advised")
            kind: "small"
            soft: true
        }
        Cell {
            place: 2
            text: qsTr("left")
            kind: "small"
            soft: true
        }
    }
    Repeater {
        model: group.rows
        delegate: TouchTarget {
            id: line
            required property var modelData
            readonly property bool explained: modelData.setting.length > 0
            readonly property string advised: modelData.advised.length > 0 ? modelData.advised : explained ? qsTr("no value") : "–"
            readonly property string meaning: modelData.leftDiffers.length > 0 ? qsTr("left: %1").arg(modelData.leftDiffers) : modelData.foundDiffers.length > 0 ? qsTr("found: %1").arg(modelData.foundDiffers) : ""
            text: modelData.label
            enabled: explained
            Accessible.role: Accessible.Button
            Accessible.name: modelData.label
            Accessible.description: [Sentence.fill(qsTr("found %1, advised %2, left %3"), [modelData.found, advised, modelData.left]), meaning].join("; ")
            onClicked: group.reasonAsked(modelData.setting)
            Layout.fillWidth: true
            horizontalPadding: 0
            background: Rectangle {
                color: line.down ? Theme.waterTint : "transparent"
                Rectangle {
                    width: parent.width
                    height: Theme.border
                    color: Theme.line
                }
            }
            contentItem: Item {
                implicitHeight: Math.max(children[0].implicitHeight, children[1].implicitHeight, children[2].implicitHeight, children[3].implicitHeight)
                Column {
                    width: parent.width - 3 * (group.column + Theme.gap)
                    PlainWords {
                        width: parent.width
                        text: line.modelData.label
                        color: Theme.ink
                    }
                    PlainWords {
                        visible: text.length > 0
                        width: parent.width
                        text: line.modelData.trade
                        kind: "small"
                        color: Theme.inkSoft
                    }
                    PlainWords {
                        visible: text.length > 0
                        width: parent.width
                        text: line.modelData.brief
                        kind: "small"
                        color: Theme.inkSoft
                    }
                    PlainWords {
                        visible: text.length > 0
                        width: parent.width
                        text: line.meaning
                        kind: "small"
                        color: Theme.warningInk
                    }
                }
                Cell {
                    place: 0
                    text: line.modelData.found.length > 0 ? (line.modelData.foundDiffers.length > 0 ? qsTr("≠ %1").arg(line.modelData.found) : line.modelData.found) : "–"
                    color: Theme.ink
                }
                Cell {
                    place: 1
                    text: line.advised
                    color: line.explained ? Theme.water : Theme.ink
                    font.bold: line.explained
                    font.underline: line.explained
                }
                Cell {
                    place: 2
                    text: line.modelData.left.length > 0 ? (line.modelData.leftDiffers.length > 0 ? qsTr("≠ %1").arg(line.modelData.left) : line.modelData.left) : "–"
                    color: line.modelData.leftDiffers.length > 0 ? Theme.warningInk : Theme.ink
                    font.bold: line.modelData.leftDiffers.length > 0
                }
            }
        }
    }
}
