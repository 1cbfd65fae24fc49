// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Results of each bank with their spread, every reading (used or not, and why), and the last marks.
ScrollColumn {
    id: card

    required property StopwatchViewModel stopwatch

    margin: 0

    Repeater {
        model: card.stopwatch.results
        delegate: ColumnLayout {
            id: result
            required property var modelData
            spacing: 0
            Layout.fillWidth: true
            RowLayout {
                spacing: Theme.gap
                PlainWords {
                    text: Sentence.fill(qsTr("%1: %2"), [result.modelData.bank, result.modelData.what])
                    Layout.fillWidth: true
                }
                PlainWords {
                    text: Sentence.fill(qsTr("%1 %2"), [result.modelData.mean, result.modelData.uncertainty])
                    font.bold: true
                }
            }
            PlainWords {
                text: result.modelData.spread
                kind: "small"
                soft: true
                Layout.fillWidth: true
            }
        }
    }
    PlainWords {
        visible: card.stopwatch.readings.length > 0
        text: qsTr("Readings")
        kind: "small"
        font.bold: true
    }
    Repeater {
        model: card.stopwatch.readings
        delegate: RowLayout {
            id: reading
            required property var modelData
            spacing: Theme.gap
            Layout.fillWidth: true
            ColumnLayout {
                spacing: 0
                Layout.fillWidth: true
                PlainWords {
                    text: Sentence.fill(qsTr("%1: %2, %3"), [reading.modelData.bank, reading.modelData.what, reading.modelData.value])
                    font.strikeout: !reading.modelData.used
                    Layout.fillWidth: true
                }
                PlainWords {
                    visible: text.length > 0
                    text: reading.modelData.why
                    kind: "small"
                    color: Theme.warningInk
                    Layout.fillWidth: true
                }
            }
            ActionButton {
                visible: reading.modelData.used || reading.modelData.setAside
                text: reading.modelData.setAside ? qsTr("Use again") : qsTr("Set aside")
                onClicked: reading.modelData.setAside ? card.stopwatch.useAgain(reading.modelData.endMark) : card.stopwatch.setAside(reading.modelData.endMark, qsTr("pressed late or by mistake"))
            }
        }
    }
    PlainWords {
        visible: card.stopwatch.lastMarks.length > 0
        text: qsTr("Marks, newest first")
        kind: "small"
        font.bold: true
    }
    Repeater {
        model: card.stopwatch.lastMarks
        delegate: MarkLine {}
    }
}
