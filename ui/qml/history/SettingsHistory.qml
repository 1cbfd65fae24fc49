// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What stood in each timer after each visit.
Card {
    id: card

    required property HistoryViewModel history

    title: qsTr("Settings over the years")

    Repeater {
        model: card.history.timers
        delegate: Fold {
            id: timer
            required property var modelData
            title: modelData.name
            summary: modelData.summary
            Layout.fillWidth: true
            content: Component {
                HistoryChart {
                    shown: card.history.settingsChart(timer.modelData.index)
                    name: Sentence.fill(qsTr("Settings of %1"), [timer.modelData.name])
                    words: timer.modelData.summary
                    Layout.fillWidth: true
                    Layout.leftMargin: Theme.space
                }
            }
        }
    }
}
