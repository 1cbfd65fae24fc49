// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// The visits of a house, the latest first.
Card {
    id: card

    required property SessionViewModel session

    signal removalAsked(string visit)

    // What nobody looks for is not laid out: a house may have hundreds.
    readonly property int latest: 10
    readonly property var visits: session.houseVisits
    property bool all: false

    title: qsTr("Visits")

    PlainWords {
        visible: card.visits.length === 0
        text: qsTr("Not visited yet.")
        Layout.fillWidth: true
    }
    PlainWords {
        visible: text.length > 0
        text: card.session.history.nextVisit
        Layout.fillWidth: true
    }
    Repeater {
        model: card.all ? card.visits : card.visits.slice(0, card.latest)
        delegate: RowLayout {
            id: visitRow
            required property var modelData
            spacing: Theme.gap
            Layout.fillWidth: true
            TouchTarget {
                id: visitLine
                text: qsTr("Visit of %1").arg(visitRow.modelData.title)
                Accessible.role: Accessible.Button
                Accessible.description: visitRow.modelData.detail
                onClicked: card.session.openVisit(visitRow.modelData.id)
                Layout.fillWidth: true
                background: Rectangle {
                    color: visitLine.down ? Theme.waterTint : Theme.well
                    radius: Theme.radius
                    border.width: Theme.border
                    border.color: Theme.line
                }
                contentItem: RowLayout {
                    spacing: Theme.space
                    Pictogram {
                        name: visitRow.modelData.isSigned ? "sheet" : "pencil"
                        colour: Theme.water
                    }
                    PlainWords {
                        text: visitRow.modelData.title
                        font.bold: true
                    }
                    PlainWords {
                        text: visitRow.modelData.detail
                        soft: true
                        Layout.fillWidth: true
                    }
                    Pictogram {
                        name: "forward"
                        colour: Theme.water
                    }
                }
            }
            ActionButton {
                visible: !card.session.readOnly
                pictogram: "bin"
                Accessible.name: qsTr("Remove the visit of %1").arg(visitRow.modelData.title)
                onClicked: card.removalAsked(visitRow.modelData.id)
            }
        }
    }
    ActionButton {
        visible: !card.all && card.visits.length > card.latest
        text: Sentence.fill(qsTr("All visits: %1"), [card.visits.length])
        pictogram: "down"
        onClicked: card.all = true
    }
    ActionButton {
        visible: card.visits.length > 0
        text: qsTr("Sheets of these visits")
        pictogram: "printer"
        onClicked: card.session.showSheets()
    }
}
