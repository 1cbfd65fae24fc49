// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// One house: its banks, what became of them over the years, and its visits.
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
    UndoLine {
        text: page.session.maintenance.outcome
        undoable: page.session.maintenance.undoable
        problem: page.session.maintenance.problem
        onUndoAsked: page.session.maintenance.undo()
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
        visible: page.session.history.banks.length > 0
        title: qsTr("Over the years")
        Layout.fillWidth: true
        Repeater {
            model: page.session.history.banks
            delegate: BankHistory {
                required property var modelData
                history: page.session.history
                name: modelData.name
                cause: modelData.cause
                remedy: modelData.remedy
                series: modelData.series
                Layout.fillWidth: true
            }
        }
        Fold {
            visible: page.session.history.cautions.length > 0
            title: qsTr("Cautions: read them before anybody works on pump, header or pads")
            summary: ""
            Layout.fillWidth: true
            content: Component {
                ColumnLayout {
                    spacing: Theme.gap
                    Layout.fillWidth: true
                    Repeater {
                        model: page.session.history.cautions
                        delegate: CautionBox {
                            required property var modelData
                            level: modelData.level
                            message: modelData.text
                            source: modelData.source
                            Layout.fillWidth: true
                        }
                    }
                    PlainWords {
                        text: page.session.history.codesComeFirst
                        kind: "small"
                        soft: true
                        Layout.fillWidth: true
                    }
                }
            }
        }
    }
    Card {
        visible: page.session.houseVisits.length > 0
        title: qsTr("What the settings cost")
        Layout.fillWidth: true
        DayFold {
            day: page.session.day
            Layout.fillWidth: true
        }
    }
    MaintenanceCard {
        maintenance: page.session.maintenance
        readOnly: page.session.readOnly
        Layout.fillWidth: true
    }
    SettingsHistory {
        visible: page.session.history.timers.length > 0
        history: page.session.history
        Layout.fillWidth: true
    }
    FarmComparison {
        visible: page.session.history.hasNeighbours
        history: page.session.history
        Layout.fillWidth: true
    }
    VisitsCard {
        session: page.session
        onRemovalAsked: visit => removal.askToRemove(confirm, "visit", visit)
        Layout.fillWidth: true
    }
    ActionButton {
        visible: !page.session.readOnly
        text: qsTr("Remove this house")
        pictogram: "bin"
        onClicked: removal.askToRemove(confirm, "house", page.session.houseId)
    }
}
