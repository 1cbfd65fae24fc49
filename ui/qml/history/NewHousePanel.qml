// SPDX-License-Identifier: Apache-2.0
pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Wetfront.Controls
import Wetfront.Theme
import Wetfront.ViewModels

// Names a new house and its farm. The last place where letters are typed before the visit. Opens as it is loaded.
Item {
    id: asked

    required property SessionViewModel session

    Component.onCompleted: panel.open()

    Panel {
        id: panel

        property string farmId
        property string farmName
        property string houseName

        title: qsTr("New house")
        contentHeight: body.implicitHeight

        onAboutToShow: {
            farmId = asked.session.farms[0].value;
            farmName = "";
            houseName = "";
        }

        ScrollColumn {
            id: body
            anchors.fill: parent
            margin: 0
            PlainWords {
                text: panel.title
                kind: "heading"
                Layout.fillWidth: true
            }
            ChoiceRow {
                visible: asked.session.farms.length > 1
                label: qsTr("Farm")
                model: asked.session.farms
                current: panel.farmId
                onChosen: value => panel.farmId = value
                Layout.fillWidth: true
            }
            TextFieldRow {
                visible: panel.farmId.length === 0
                label: qsTr("Name of the farm")
                text: panel.farmName
                maximumLength: 100
                onEdited: text => panel.farmName = text
                Layout.fillWidth: true
            }
            TextFieldRow {
                label: qsTr("Name of the house")
                text: panel.houseName
                maximumLength: 100
                onEdited: text => panel.houseName = text
                Layout.fillWidth: true
            }
            RowLayout {
                spacing: Theme.gap
                Layout.alignment: Qt.AlignRight
                ActionButton {
                    text: qsTr("Cancel")
                    onClicked: panel.close()
                }
                ActionButton {
                    text: qsTr("Start the visit")
                    kind: "primary"
                    enabled: panel.houseName.trim().length > 0 && (panel.farmId.length > 0 || panel.farmName.trim().length > 0)
                    onClicked: {
                        panel.close();
                        asked.session.startHouse(panel.farmId, panel.farmName, panel.houseName);
                    }
                }
            }
        }
    }
}
