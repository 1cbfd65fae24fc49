// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// One house: its banks, and its visits, latest first.
ScrollColumn {
    id: page

    required property SessionViewModel session
    readonly property bool hasOpenVisit: session.houseVisits.length > 0 && !session.houseVisits[0].isSigned

    ConfirmPanel {
        id: confirm
    }
    PlainWords {
        text: page.session.houseName
        kind: "heading"
        Layout.fillWidth: true
    }
    PlainWords {
        text: page.session.houseFarm
        soft: true
        Layout.fillWidth: true
    }
    RemovalLine {
        id: removal
        removed: page.session.removed
        Layout.fillWidth: true
    }
    RowLayout {
        spacing: Theme.gap
        ActionButton {
            visible: page.hasOpenVisit
            text: page.session.readOnly ? qsTr("Look at the open visit") : qsTr("Go on with the open visit")
            kind: "primary"
            pictogram: "forward"
            onClicked: page.session.openVisit(page.session.houseVisits[0].id)
        }
        ActionButton {
            visible: !page.session.readOnly
            text: qsTr("Start a visit")
            kind: page.hasOpenVisit ? "quiet" : "primary"
            pictogram: "plus"
            onClicked: page.session.startVisit()
        }
    }
    Card {
        title: qsTr("Banks")
        Layout.fillWidth: true
        Flow {
            spacing: Theme.spaceLarge
            Layout.fillWidth: true
            Repeater {
                model: page.session.houseBanks
                delegate: ColumnLayout {
                    id: bank
                    required property var modelData
                    spacing: Theme.spaceSmall
                    BankThumbnail {
                        pumpOnLeft: bank.modelData.pumpOnLeft
                        aspect: bank.modelData.aspect
                    }
                    PlainWords {
                        text: bank.modelData.name
                        font.bold: true
                        Layout.maximumWidth: Theme.thumbnailWidth
                    }
                    PlainWords {
                        text: bank.modelData.text
                        kind: "small"
                        soft: true
                        Layout.maximumWidth: Theme.thumbnailWidth
                    }
                }
            }
        }
    }
    Card {
        title: qsTr("Visits")
        Layout.fillWidth: true
        PlainWords {
            visible: page.session.houseVisits.length === 0
            text: qsTr("Not visited yet.")
            Layout.fillWidth: true
        }
        Repeater {
            model: page.session.houseVisits
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
                    onClicked: page.session.openVisit(visitRow.modelData.id)
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
                    visible: !page.session.readOnly
                    pictogram: "bin"
                    Accessible.name: qsTr("Remove the visit of %1").arg(visitRow.modelData.title)
                    onClicked: removal.askToRemove(confirm, "visit", visitRow.modelData.id)
                }
            }
        }
    }
    Card {
        visible: page.session.history.banks.length > 0
        title: qsTr("Over the years")
        Layout.fillWidth: true
        Repeater {
            model: page.session.history.banks
            delegate: BankHistory {
                required property var modelData
                name: modelData.name
                cause: modelData.cause
                series: modelData.series
                Layout.fillWidth: true
            }
        }
    }
    ActionButton {
        visible: !page.session.readOnly
        text: qsTr("Remove this house")
        pictogram: "bin"
        onClicked: removal.askToRemove(confirm, "house", page.session.houseId)
    }
}
