// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// All houses, by name.
Item {
    id: page

    required property SessionViewModel session

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: Theme.space
        spacing: Theme.space

        RowLayout {
            spacing: Theme.space
            PlainWords {
                text: qsTr("Houses")
                kind: "heading"
                Layout.fillWidth: true
            }
            ActionButton {
                visible: page.session.houses.total > 1
                text: qsTr("Find")
                pictogram: "lens"
                kind: find.visible ? "primary" : "quiet"
                onClicked: find.visible = find.narrowed || !find.visible
            }
            ActionButton {
                visible: page.session.houses.total > 0
                // Upright there is no room for one more word.
                text: page.width > page.height ? qsTr("Sheets") : ""
                pictogram: "printer"
                Accessible.name: qsTr("Sheets")
                onClicked: page.session.showSheets()
            }
            ActionButton {
                visible: page.session.removed.count > 0
                text: qsTr("Removed")
                pictogram: "bin"
                onClicked: page.session.showRemoved()
            }
            ActionButton {
                visible: !page.session.readOnly
                text: qsTr("New house")
                pictogram: "plus"
                kind: page.session.houses.total === 0 ? "primary" : "quiet"
                onClicked: newHouse.ask()
            }
        }
        RemovalLine {
            removed: page.session.removed
            Layout.fillWidth: true
        }
        ErrorLine {
            text: page.session.copies.problem
            Layout.fillWidth: true
        }
        PlainWords {
            visible: text.length > 0
            text: page.session.copies.notice
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
            Layout.fillWidth: true
        }
        FindHouses {
            id: find
            visible: narrowed
            houses: page.session.houses
            Layout.fillWidth: true
        }
        EmptyHint {
            visible: page.session.houses.total === 0
            text: qsTr("No house yet")
            detail: qsTr("Describe the first one: its pumps and banks, then time the water.")
            pictogram: "house"
            actionText: page.session.readOnly ? "" : qsTr("Describe a house")
            onActed: newHouse.ask()
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
        // The window does not wait for its list: it is there a few frames later.
        Loader {
            asynchronous: true
            visible: page.session.houses.total > 0
            Component.onCompleted: setSource("qrc:/qt/qml/Wetfront/History/HousesList.qml", {
                session: page.session
            })
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
    }

    Loader {
        id: newHouse
        function ask(): void {
            setSource("qrc:/qt/qml/Wetfront/History/NewHousePanel.qml", {
                session: page.session
            });
        }
    }
}
