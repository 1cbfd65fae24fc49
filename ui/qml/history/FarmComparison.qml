// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The houses of a farm on one chart. They are read when it is opened, one after the other.
Fold {
    id: fold

    required property HistoryViewModel history
    property string followed: "wet-through"

    title: qsTr("Compare the houses of this farm")
    summary: history.comparing
    onOpenChanged: {
        if (open)
            history.compare();
        else
            history.stopComparing();
    }

    content: Component {
        ColumnLayout {
            spacing: Theme.gap
            Layout.fillWidth: true
            Layout.leftMargin: Theme.space
            RowLayout {
                visible: fold.history.comparing.length > 0
                spacing: Theme.space
                PlainWords {
                    text: fold.history.comparing
                    Layout.fillWidth: true
                }
                ActionButton {
                    text: qsTr("Enough")
                    onClicked: fold.history.stopComparing()
                }
            }
            ChoiceRow {
                label: qsTr("What to compare")
                model: fold.history.comparable
                current: fold.followed
                onChosen: value => fold.followed = value
                Layout.fillWidth: true
            }
            HistoryChart {
                // Read anew whenever another house was read.
                shown: fold.history.comparable.length > 0 ? fold.history.comparison(fold.followed) : ({
                        rows: [],
                        legend: []
                    })
                name: qsTr("Houses of this farm")
                words: qsTr("one line for each bank")
                Layout.fillWidth: true
            }
        }
    }
}
