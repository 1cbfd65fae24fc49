// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What was measured of one bank over the years: a sentence for each series, with its chart behind it, what likely lies
// behind it and what to do.
ColumnLayout {
    id: bank

    required property HistoryViewModel history
    required property string name
    required property string cause   // empty: nothing gets worse
    required property string remedy
    required property var series     // of {words, shift, limit, values, index, worse}; shift and limit may be empty

    spacing: Theme.gap

    PlainWords {
        text: bank.name
        kind: "title"
        Accessible.role: Accessible.Heading
        Layout.fillWidth: true
    }
    PlainWords {
        visible: text.length > 0
        text: bank.cause
        color: Theme.warningInk
        Layout.fillWidth: true
    }
    PlainWords {
        visible: text.length > 0
        text: bank.remedy
        font.bold: true
        Layout.fillWidth: true
    }
    Repeater {
        model: bank.series
        delegate: Fold {
            id: line
            required property var modelData
            title: modelData.words
            summary: modelData.worse ? qsTr("gets worse") : ""
            open: modelData.index === bank.history.first
            Layout.fillWidth: true
            content: Component {
                ColumnLayout {
                    spacing: Theme.gap
                    Layout.fillWidth: true
                    Layout.leftMargin: Theme.space
                    PlainWords {
                        visible: text.length > 0
                        text: line.modelData.shift
                        Layout.fillWidth: true
                    }
                    PlainWords {
                        visible: text.length > 0
                        text: line.modelData.limit
                        font.bold: true
                        Layout.fillWidth: true
                    }
                    PlainWords {
                        text: line.modelData.values
                        kind: "small"
                        soft: true
                        Layout.fillWidth: true
                    }
                    HistoryChart {
                        shown: bank.history.chart(line.modelData.index)
                        name: Sentence.fill(qsTr("%1, %2"), [bank.name, shown.picture.title])
                        words: line.modelData.words
                        Layout.fillWidth: true
                    }
                }
            }
        }
    }
}
