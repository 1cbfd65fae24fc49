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

    component Cell: StyledText {
        horizontalAlignment: Text.AlignRight
        Layout.minimumWidth: group.column
        Layout.preferredWidth: group.column
        Layout.maximumWidth: group.column
    }

    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Item {
            Layout.fillWidth: true
        }
        Cell {
            text: qsTr("found")
            kind: "small"
            soft: true
        }
        Cell {
            text: qsTr("advised")
            kind: "small"
            soft: true
        }
        Cell {
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
            text: modelData.label
            enabled: explained
            Accessible.role: Accessible.Button
            Accessible.name: modelData.label
            Accessible.description: qsTr("found %1, advised %2, left %3").arg(modelData.found).arg(modelData.advised).arg(modelData.left)
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
            contentItem: RowLayout {
                spacing: Theme.gap
                ColumnLayout {
                    spacing: 0
                    Layout.fillWidth: true
                    StyledText {
                        text: line.modelData.label
                        color: Theme.ink
                        Layout.fillWidth: true
                    }
                    StyledText {
                        visible: text.length > 0
                        text: line.modelData.brief
                        kind: "small"
                        color: Theme.inkSoft
                        Layout.fillWidth: true
                    }
                }
                Cell {
                    text: line.modelData.found.length > 0 ? line.modelData.found : "–"
                    color: Theme.ink
                }
                Cell {
                    text: line.explained ? line.modelData.advised : "–"
                    color: line.explained ? Theme.water : Theme.ink
                    font.bold: line.explained
                    font.underline: line.explained
                }
                Cell {
                    text: line.modelData.left.length > 0 ? (line.modelData.differs ? qsTr("≠ %1").arg(line.modelData.left) : line.modelData.left) : "–"
                    color: line.modelData.differs ? Theme.warningInk : Theme.ink
                    font.bold: line.modelData.differs
                }
            }
        }
    }
}
