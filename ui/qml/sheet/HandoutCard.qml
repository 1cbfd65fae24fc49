// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// What the grower takes along: the sheet on a stick where there is no printer, and one page in plain words.
Card {
    id: card

    required property HandoutViewModel handout

    title: qsTr("For the grower")

    PlainWords {
        text: qsTr("The summary says on one page, in plain words, what the pads need, what was changed and what is left to do. It does not stand in for the sheet.")
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        ActionButton {
            text: qsTr("Sheet onto a stick")
            pictogram: "stick"
            kind: "primary"
            onClicked: card.handout.putOnStick(false)
        }
        ActionButton {
            text: qsTr("Summary onto a stick")
            pictogram: "stick"
            onClicked: card.handout.putOnStick(true)
        }
        ActionButton {
            text: qsTr("Print the summary")
            pictogram: "printer"
            onClicked: card.handout.printSummary()
        }
        ActionButton {
            text: card.handout.summaryShown ? qsTr("Hide the summary") : qsTr("Look at the summary")
            pictogram: card.handout.summaryShown ? "up" : "down"
            onClicked: card.handout.summaryShown ? card.handout.hideSummary() : card.handout.showSummary()
        }
    }
    PlainWords {
        visible: card.handout.media.length > 0
        text: qsTr("On which one?")
        Layout.fillWidth: true
    }
    Flow {
        visible: card.handout.media.length > 0
        spacing: Theme.gap
        Layout.fillWidth: true
        Repeater {
            model: card.handout.media
            delegate: ActionButton {
                required property string modelData
                text: qsTr("On %1").arg(modelData)
                pictogram: "stick"
                kind: "primary"
                onClicked: card.handout.putOn(modelData)
            }
        }
    }
    PlainWords {
        visible: text.length > 0
        text: card.handout.outcome
        font.bold: true
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
        Layout.fillWidth: true
    }
    ErrorLine {
        text: card.handout.problem
        Layout.fillWidth: true
    }
    SheetPicture {
        visible: card.handout.summaryShown
        source: card.handout.summaryShown ? "image://sheet/summary/" + card.handout.summaryRevision : ""
        name: qsTr("the summary")
        Layout.fillWidth: true
    }

    WorkPanel {
        text: card.handout.busyText
        cancellable: false
        working: card.handout.busy
    }
}
