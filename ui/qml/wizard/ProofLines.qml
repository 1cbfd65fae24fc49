// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme

// What was set, what was seen and the verdict, a line each, with the rule by which they are judged.
Card {
    id: card

    required property var lines
    required property string rule

    readonly property real cell: (width - 2 * Theme.space - 3 * Theme.gap) / 8

    title: qsTr("Set and seen")
    spacing: Theme.gap

    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true
        Repeater {
            model: [
                {
                    text: "",
                    cells: 2.7
                },
                {
                    text: qsTr("set or expected"),
                    cells: 2
                },
                {
                    text: qsTr("seen ± U (95 %)"),
                    cells: 1.5
                },
                {
                    text: qsTr("verdict"),
                    cells: 1.8
                }
            ]
            delegate: PlainWords {
                required property var modelData
                text: modelData.text
                kind: "small"
                soft: true
                Layout.preferredWidth: card.cell * modelData.cells
            }
        }
    }
    Repeater {
        model: card.lines
        delegate: Item {
            id: line
            required property var modelData

            implicitHeight: cells.implicitHeight
            Layout.fillWidth: true
            Accessible.role: Accessible.StaticText
            Accessible.name: modelData.spoken

            RowLayout {
                id: cells
                width: parent.width
                spacing: Theme.gap
                ColumnLayout {
                    spacing: 0
                    Layout.preferredWidth: card.cell * 2.7
                    PlainWords {
                        text: line.modelData.what
                        Accessible.ignored: true
                        Layout.fillWidth: true
                    }
                    PlainWords {
                        visible: text.length > 0
                        text: line.modelData.allowed
                        kind: "small"
                        soft: true
                        Accessible.ignored: true
                        Layout.fillWidth: true
                    }
                }
                PlainWords {
                    text: line.modelData.set
                    Accessible.ignored: true
                    Layout.preferredWidth: card.cell * 2
                }
                PlainWords {
                    text: line.modelData.seen
                    font.bold: true
                    Accessible.ignored: true
                    Layout.preferredWidth: card.cell * 1.5
                }
                RowLayout {
                    spacing: Theme.gap
                    Layout.preferredWidth: card.cell * 1.8
                    VerdictMark {
                        verdict: line.modelData.verdict
                    }
                    PlainWords {
                        text: line.modelData.word
                        color: line.modelData.verdict === "fail" ? Theme.warningInk : Theme.ink
                        font.bold: line.modelData.verdict !== "open"
                        Accessible.ignored: true
                        Layout.fillWidth: true
                    }
                }
            }
        }
    }
    PlainWords {
        text: card.rule
        kind: "small"
        soft: true
        Layout.fillWidth: true
    }
}
