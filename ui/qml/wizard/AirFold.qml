// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme

// The air outside, behind the pad and in the house.
Fold {
    id: fold

    required property var picture
    required property var words
    readonly property bool known: picture.outside !== undefined

    title: qsTr("Air picture")
    summary: known ? qsTr("outside, behind the pad, in the house") : qsTr("not known yet")

    content: Component {
        ColumnLayout {
            spacing: Theme.space
            Layout.fillWidth: true
            Layout.leftMargin: Theme.space
            AirItem {
                visible: fold.known
                implicitHeight: Theme.pictureHeight * 1.4
                picture: fold.picture
                font.family: Theme.family
                font.pixelSize: Theme.fontSmall
                lineColor: Theme.ink
                faintColor: Theme.line
                groundColor: Theme.surface
                waterColor: Theme.water
                warmColor: Theme.warning
                stroke: Theme.borderStrong
                Layout.fillWidth: true
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("the air outside, behind the pad and in the house")
                Accessible.description: [fold.picture.outside, fold.picture.behindPad, fold.picture.house].filter(state => state !== undefined).map(state => state.label.replace("\n", ": ")).join("; ")
            }
            ResultLines {
                lines: fold.words
                Layout.fillWidth: true
            }
        }
    }
}
