// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import QtQuick.Templates as T
import Wetfront.Theme

// Where a number comes from: the rule, what was put in, what came out, the source.
Panel {
    id: sheet

    property var reason: ({})

    // {title, explanation, formula, inputs: [{name, symbol, value, origin, source}], result, rounding, source}
    function explain(what: var): void {
        reason = what;
        open();
    }

    title: reason.title ?? ""
    closePolicy: T.Popup.CloseOnEscape | T.Popup.CloseOnPressOutside

    component Part: ColumnLayout {
        id: part
        required property string name
        required property string words
        visible: words.length > 0
        spacing: 0
        Layout.fillWidth: true
        PlainWords {
            text: part.name
            kind: "small"
            soft: true
            Layout.fillWidth: true
        }
        PlainWords {
            text: part.words
            Layout.fillWidth: true
        }
    }

    contentHeight: body.implicitHeight

    ColumnLayout {
        id: body
        anchors.fill: parent
        spacing: Theme.gap
        RowLayout {
            PlainWords {
                text: sheet.title
                kind: "heading"
                Layout.fillWidth: true
            }
            ActionButton {
                pictogram: "cross"
                Accessible.name: qsTr("Close")
                onClicked: sheet.close()
            }
        }
        ScrollColumn {
            focus: true
            margin: 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.preferredHeight: implicitHeight

            PlainWords {
                visible: text.length > 0
                text: sheet.reason.explanation ?? ""
                Layout.fillWidth: true
            }
            Part {
                name: qsTr("Rule")
                words: sheet.reason.formula ?? ""
            }
            Repeater {
                model: sheet.reason.inputs ?? []
                delegate: ColumnLayout {
                    id: row
                    required property var modelData
                    spacing: 0
                    Layout.fillWidth: true
                    Rectangle {
                        implicitHeight: Theme.border
                        color: Theme.line
                        Layout.fillWidth: true
                    }
                    RowLayout {
                        spacing: Theme.space
                        PlainWords {
                            text: row.modelData.symbol ? Sentence.fill(qsTr("%1 (%2)"), [row.modelData.name, row.modelData.symbol]) : row.modelData.name
                            Layout.fillWidth: true
                        }
                        PlainWords {
                            text: row.modelData.value
                            font.bold: true
                            horizontalAlignment: Text.AlignRight
                        }
                    }
                    PlainWords {
                        visible: text.length > 0
                        text: [row.modelData.origin, row.modelData.source].filter(part => part).join(" · ")
                        kind: "small"
                        soft: true
                        Layout.fillWidth: true
                    }
                }
            }
            Rectangle {
                implicitHeight: Theme.borderStrong
                color: Theme.ink
                Layout.fillWidth: true
            }
            PlainWords {
                visible: text.length > 0
                text: sheet.reason.result ?? ""
                kind: "number"
                font.bold: true
                Layout.fillWidth: true
            }
            Part {
                name: qsTr("Rounding")
                words: sheet.reason.rounding ?? ""
            }
            Part {
                name: qsTr("Source")
                words: sheet.reason.source ?? ""
            }
        }
    }
}
