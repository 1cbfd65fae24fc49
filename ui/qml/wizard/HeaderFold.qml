// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Charts
import Wetfront.Controls
import Wetfront.Theme

// A bank's header with the flow of each outlet, and what is known or missing for it.
Fold {
    id: fold

    required property string bank
    required property var picture
    required property var words
    readonly property bool known: picture.uniformity !== undefined

    title: qsTr("Flow by outlet")
    summary: known ? picture.uniformity : qsTr("not known yet")

    content: Component {
        ColumnLayout {
            spacing: Theme.space
            Layout.fillWidth: true
            Layout.leftMargin: Theme.space
            HeaderItem {
                visible: fold.known
                implicitHeight: Theme.pictureHeight
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
                Accessible.name: qsTr("flow by outlet of %1").arg(fold.bank)
                Accessible.description: [fold.picture.inletHead, fold.picture.uniformity, fold.picture.first, fold.picture.last, fold.picture.lowest].join("; ")
            }
            ResultLines {
                lines: fold.words
                Layout.fillWidth: true
            }
        }
    }
}
