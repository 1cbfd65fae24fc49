// SPDX-License-Identifier: Apache-2.0
import QtQuick
import Wetfront.Charts
import Wetfront.Theme

// A bank in small: header on top, pump at its true end.
BankItem {
    implicitWidth: Theme.thumbnailWidth
    implicitHeight: Theme.thumbnailHeight
    lineColor: Theme.ink
    faintColor: Theme.line
    groundColor: Theme.surface
    waterColor: Theme.water
    warmColor: Theme.warning
    stroke: Theme.border
    Accessible.role: Accessible.Graphic
    Accessible.name: pumpOnLeft ? qsTr("bank with its pump on the left") : qsTr("bank with its pump on the right")
}
