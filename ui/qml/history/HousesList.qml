// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import Wetfront.Theme
import Wetfront.ViewModels

// The houses by name; a touch opens one.
ListView {
    id: list

    required property SessionViewModel session

    model: session.houses
    spacing: Theme.gap
    clip: true
    reuseItems: true
    boundsBehavior: Flickable.StopAtBounds
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Houses")
    delegate: HouseDelegate {
        width: list.width
        onClicked: list.session.openHouse(houseId)
    }
}
