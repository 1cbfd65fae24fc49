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
            StyledText {
                text: qsTr("Houses")
                kind: "heading"
                Layout.fillWidth: true
            }
            ActionButton {
                text: qsTr("New house")
                pictogram: "plus"
                kind: page.session.houses.count === 0 ? "primary" : "quiet"
                onClicked: newHouse.open()
            }
        }
        EmptyHint {
            visible: page.session.houses.count === 0
            text: qsTr("No house yet")
            detail: qsTr("Describe the first one: its pumps and banks, then time the water.")
            pictogram: "house"
            actionText: qsTr("Describe a house")
            onActed: newHouse.open()
            Layout.fillWidth: true
            Layout.fillHeight: true
        }
        ListView {
            id: list
            visible: page.session.houses.count > 0
            model: page.session.houses
            spacing: Theme.gap
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            Layout.fillWidth: true
            Layout.fillHeight: true
            Accessible.role: Accessible.List
            Accessible.name: qsTr("Houses")
            delegate: HouseDelegate {
                width: list.width
                onClicked: page.session.openHouse(houseId)
            }
        }
    }

    NewHousePanel {
        id: newHouse
        session: page.session
    }
}
